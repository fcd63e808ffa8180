package org.staywright.document;

import com.lowagie.text.Font;
import com.lowagie.text.pdf.BaseFont;
import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.SecureRandom;

/** The embedded type, read once: DejaVu Sans, which has every sign the documents use. */
enum Typeface {
  REGULAR("DejaVuSans.ttf"),
  BOLD("DejaVuSans-Bold.ttf");

  private final BaseFont base;

  Typeface(String file) {
    this.base = read(file);
  }

  BaseFont base() {
    return base;
  }

  Font font(float size, Color colour) {
    return new Font(base, size, Font.NORMAL, colour);
  }

  private static BaseFont read(String file) {
    try (InputStream in = Typeface.class.getResourceAsStream("/fonts/" + file)) {
      BaseFont font =
          BaseFont.createFont(
              file, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, true, in.readAllBytes(), null);
      font.setSecureRandom(new Fixed());
      return font;
    } catch (IOException e) {
      throw new UncheckedIOException("font " + file, e);
    }
  }

  /** Names the subset alike every time, so that a document is the same whenever it is made. */
  private static final class Fixed extends SecureRandom {

    private static final long serialVersionUID = 1L;

    @Override
    public double nextDouble() {
      return 0.5;
    }
  }
}
