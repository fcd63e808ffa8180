// What a form held, to go back to and forward again.
export class History {
  #form;
  #undo;
  #redo;
  #states;
  #at = 0;

  constructor(form, undo, redo) {
    this.#form = form;
    this.#undo = undo;
    this.#redo = redo;
    this.#states = [this.#now()];
    form.addEventListener('change', () => this.keep());
    undo.addEventListener('click', () => this.#go(-1));
    redo.addEventListener('click', () => this.#go(1));
    document.addEventListener('keydown', (event) => this.#key(event));
  }

  /** Remembers the form as it is now; what was undone before is gone. */
  keep() {
    const now = this.#now();
    if (JSON.stringify(now) !== JSON.stringify(this.#states[this.#at])) {
      this.#states.splice(this.#at + 1, Infinity, now);
      this.#at++;
      this.#show();
    }
  }

  #fields() {
    return [...this.#form.elements].filter(
      (each) => each.name && !['hidden', 'file', 'submit', 'button'].includes(each.type) && each.tagName !== 'FIELDSET',
    );
  }

  #now() {
    return this.#fields().map((each) => [each.id, ['checkbox', 'radio'].includes(each.type) ? each.checked : each.value]);
  }

  #go(by) {
    const to = this.#at + by;
    if (to < 0 || to >= this.#states.length) {
      return;
    }
    this.#at = to;
    for (const [id, value] of this.#states[to]) {
      const field = document.getElementById(id);
      if (field && typeof value === 'boolean') {
        field.checked = value;
      } else if (field) {
        field.value = value;
      }
    }
    this.#show();
    this.#form.dispatchEvent(new Event('restored', { bubbles: true }));
  }

  #show() {
    this.#undo.disabled = this.#at === 0;
    this.#redo.disabled = this.#at === this.#states.length - 1;
  }

  /** A text field has an undo of its own. */
  #key(event) {
    const typing = event.target.matches('input:not([type=range]):not([type=checkbox]), textarea');
    if (typing || !(event.ctrlKey || event.metaKey) || event.altKey) {
      return;
    }
    const key = event.key.toLowerCase();
    if (key === 'z' || key === 'y') {
      event.preventDefault();
      this.#go(key === 'y' || event.shiftKey ? 1 : -1);
    }
  }
}
