// A drawing of the server in the page: places in mm to the screen and back.
const MM_PER_INCH = 25.4;

/** Whether the page speaks of inches; its choice of steps says so. */
export const inches = () => document.getElementById('snap').dataset.units === 'inch-pound';

const decimalMark = new Intl.NumberFormat(document.documentElement.lang)
  .formatToParts(0.5)
  .find(({ type }) => type === 'decimal').value;

/** A length as the page writes it; a decimal point in a table, where commas stand between numbers. */
export function written(mm, inTable = false) {
  const text = String(inches() ? +(mm / MM_PER_INCH).toFixed(4) : +mm.toFixed(1));
  return inTable ? text : text.replace('.', decimalMark);
}

export class Drawing {
  scene = null;
  #read = null; // the figure that was read last
  #kept = null; // the part of the drawing, mm, that is shown while something is dragged
  #figure;

  /** @param figure finds the element that holds the drawing, which the server may replace */
  constructor(figure) {
    this.#figure = figure;
  }

  get svg() {
    return this.#figure().querySelector('svg');
  }

  /** What the server has drawn anew, null where it has not: an answer to something unsound leaves the drawing as it is. */
  read() {
    const figure = this.#figure();
    if (figure === this.#read) {
      return null;
    }
    this.#read = figure;
    this.scene = figure.dataset.scene ? JSON.parse(figure.dataset.scene) : null;
    return this.scene;
  }

  /** Another drawing in place of this one. */
  take(svg, scene) {
    this.scene = scene;
    if (this.svg) {
      this.svg.replaceWith(svg);
    } else {
      this.#figure().replaceChildren(svg);
    }
    this.#hold();
  }

  toScreen([x, y]) {
    const { left, top, scale } = this.scene;
    const on = new DOMPoint((x - left) * scale, (top - y) * scale).matrixTransform(this.svg.getScreenCTM());
    return [on.x, on.y];
  }

  toPlace(x, y) {
    const { left, top, scale } = this.scene;
    const at = new DOMPoint(x, y).matrixTransform(this.svg.getScreenCTM().inverse());
    return [at.x / scale + left, top - at.y / scale];
  }

  /** From now on what is dragged stays under the pointer: the drawing does not jump to another scale. */
  keepWindow() {
    const { left, top, scale } = this.scene;
    const box = this.svg.viewBox.baseVal;
    this.#kept = {
      left: left + box.x / scale,
      top: top - box.y / scale,
      width: box.width / scale,
      height: box.height / scale,
    };
  }

  letGo() {
    this.#kept = null;
  }

  #hold() {
    if (this.#kept) {
      const { scale, left, top } = this.scene;
      const { left: from, top: above, width, height } = this.#kept;
      const box = [from - left, top - above, width, height];
      this.svg.setAttribute('viewBox', box.map((each) => each * scale).join(' '));
    }
  }
}
