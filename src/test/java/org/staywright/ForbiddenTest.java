package org.staywright;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What no class of the program needs, and what much harm has been done with elsewhere. */
class ForbiddenTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        // Other programs, code from elsewhere.
        "java.lang.ProcessBuilder",
        "java.lang.Process",
        "java.lang.ClassLoader",
        "java.net.URLClassLoader",
        "javax.script.ScriptEngineManager",
        // Objects out of bytes.
        "java.io.ObjectInputStream",
        "java.beans.XMLDecoder",
        // Names looked up elsewhere, other computers asked.
        "javax.naming.InitialContext",
        "java.net.HttpURLConnection",
        "java.net.URLConnection",
        "java.net.http.HttpClient",
        "java.net.Socket",
        // XML by parsers that follow what a document names; workbooks go through one that does not.
        "javax.xml.parsers.DocumentBuilderFactory",
        "javax.xml.parsers.SAXParserFactory",
        "javax.xml.xpath.XPathFactory",
        "javax.xml.transform.TransformerFactory"
      })
  void noClassUses(String name) {
    noClasses().should().dependOnClassesThat().haveFullyQualifiedName(name).check(Compiled.OURS);
  }
}
