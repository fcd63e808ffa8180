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

/** A page of the server for what a form held; null where there is none. */
export async function answer(path, asked, more = {}) {
  const question = new URLSearchParams(asked);
  Object.entries(more).forEach(([name, value]) => question.set(name, value));
  try {
    const got = await fetch(`${path}?${question}`);
    return got.ok ? new DOMParser().parseFromString(await got.text(), 'text/html') : null;
  } catch {
    return null;
  }
}
