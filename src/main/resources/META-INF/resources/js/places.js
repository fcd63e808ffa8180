// Where the grips of a drawing stand is what its form holds. A move writes itself there; all else that may stand in a field
// only the server reads. So an answer is believed only while the form still holds what was asked, and a move that follows
// something typed or taken back waits until that is read: no key is lost, however late the answers come.
export class Places {
  #form;
  #ask;
  #of; // what the form held when the places were last known
  #waiting = [];

  /** @param ask has the server read the form */
  constructor(form, ask) {
    this.#form = form;
    this.#ask = ask;
    this.#of = this.held;
  }

  /** What the form holds now, as a question to the server. */
  get held() {
    return new URLSearchParams(new FormData(this.#form)).toString();
  }

  /** Does what moves a grip from where it is and writes that into the form. */
  move(make) {
    if (this.#waiting.length || this.held !== this.#of) {
      this.#waiting.push(make);
      this.#ask();
      return;
    }
    make();
    this.#of = this.held;
  }

  /**
   * An answer has come.
   *
   * @param asked what the form held when it was asked
   * @param read puts the grips where the answer has them; null where it has none: they stay where they are
   */
  answered(asked, read) {
    if (asked !== this.held) {
      return;
    }
    read?.();
    this.#of = asked;
    this.#waiting.splice(0).forEach((make) => this.move(make));
  }
}
