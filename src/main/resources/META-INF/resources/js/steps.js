// One question to the server at a time while something is dragged: the last one asked is never left out.
export class Steps {
  #ask;
  #busy = false;
  #again = null;

  /** @param ask does one step, with what it is told */
  constructor(ask) {
    this.#ask = ask;
  }

  async step(told) {
    if (this.#busy) {
      this.#again = this.#again || told;
      return;
    }
    this.#busy = true;
    this.#again = null;
    try {
      await this.#ask(told);
    } finally {
      this.#busy = false;
      if (this.#again !== null) {
        this.step(this.#again);
      }
    }
  }
}

/** A page of the server for what a form holds now; null where there is none. */
export async function answer(form, path, more = {}) {
  const asked = new URLSearchParams(new FormData(form));
  Object.entries(more).forEach(([name, value]) => asked.set(name, value));
  const got = await fetch(`${path}?${asked}`);
  return got.ok ? new DOMParser().parseFromString(await got.text(), 'text/html') : null;
}
