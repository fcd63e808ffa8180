// Knobs beside points of a drawing: dragged by pointer or moved by keys. What a move means is for the page to say.
const KNOB = 36; // px from a point to its knob, so that a finger does not cover what it moves
const DIRECTIONS = 16;
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

export class Grips {
  list = [];
  #layer;
  #stage;
  #drawing;
  #page;
  // A sheet of its own: the content policy allows no style at an element that htmx may copy.
  #sheet = new CSSStyleSheet();

  /**
   * @param layer that the knobs stand in
   * @param drawing below them
   * @param page place(grip) in mm, label(grip), looks(grip) as a class, drag(grip, place), nudge(grip, way, far), release(grip, moved)
   */
  constructor(layer, drawing, page) {
    this.#layer = layer;
    this.#stage = layer.parentElement;
    this.#drawing = drawing;
    this.#page = page;
    document.adoptedStyleSheets.push(this.#sheet);
    new ResizeObserver(() => this.arrange()).observe(this.#stage);
    window.addEventListener('load', () => this.arrange());
  }

  /** These and no others. Those that were there before stay the same, so that one that has the focus keeps it. */
  put(list) {
    const kept = list.map((each) => Object.assign(this.list.find((known) => same(known, each)) ?? {}, each));
    this.list.filter((each) => !kept.includes(each)).forEach((each) => each.knob.remove());
    this.list = kept;
    kept.forEach((grip, i) => {
      grip.knob ??= this.#make(grip);
      if (this.#layer.children[i] !== grip.knob) {
        this.#layer.insertBefore(grip.knob, this.#layer.children[i] ?? null);
      }
    });
    if (!kept.some((each) => each.knob.tabIndex === 0)) {
      kept[0].knob.tabIndex = 0;
    }
  }

  #make(grip) {
    const knob = document.createElement('button');
    knob.type = 'button';
    knob.className = this.#page.looks(grip);
    knob.tabIndex = -1;
    knob.addEventListener('pointerdown', (event) => this.#dragged(grip, event));
    knob.addEventListener('keydown', (event) => this.#keyed(grip, event));
    return knob;
  }

  #name(grip) {
    grip.knob.setAttribute('aria-label', this.#page.label(grip));
    grip.knob.title = grip.label;
  }

  /** Every knob where it belongs. */
  arrange() {
    if (!this.#drawing.svg || !this.#drawing.scene) {
      return;
    }
    const corner = this.#stage.getBoundingClientRect();
    const points = this.list.map((grip) => this.#drawing.toScreen(this.#page.place(grip)));
    const knobs = [];
    const rules = [];
    this.list.forEach((grip, i) => {
      if (!grip.held) {
        grip.away = freest(points[i], [...points, ...knobs], points[i], corner);
      }
      const at = [points[i][0] + grip.away[0], points[i][1] + grip.away[1]];
      knobs.push(at);
      const toward = Math.atan2(-grip.away[1], -grip.away[0]);
      const place = `left: ${at[0] - corner.left}px; top: ${at[1] - corner.top}px; --toward: ${toward}rad`;
      rules.push(`.grip:nth-child(${i + 1}) { ${place} }`);
      this.#name(grip);
    });
    this.#sheet.replaceSync(rules.join(''));
  }

  #dragged(grip, down) {
    if (down.button !== 0) {
      return;
    }
    down.preventDefault();
    this.#focusOn(grip);
    grip.held = true;
    const { knob } = grip;
    knob.setPointerCapture(down.pointerId);
    const point = this.#drawing.toScreen(this.#page.place(grip));
    const off = [point[0] - down.clientX, point[1] - down.clientY];
    this.#drawing.keepWindow();
    let drawn = false;
    const moved = (event) => {
      drawn = true;
      this.#page.drag(grip, this.#drawing.toPlace(event.clientX + off[0], event.clientY + off[1]));
      this.arrange();
    };
    const up = () => {
      knob.removeEventListener('pointermove', moved);
      knob.removeEventListener('pointerup', up);
      knob.removeEventListener('pointercancel', up);
      grip.held = false;
      this.#drawing.letGo();
      this.#page.release(grip, drawn);
    };
    knob.addEventListener('pointermove', moved);
    knob.addEventListener('pointerup', up);
    knob.addEventListener('pointercancel', up);
  }

  #keyed(grip, event) {
    const next = { PageDown: 1, PageUp: -1 }[event.key];
    if (next) {
      event.preventDefault();
      this.#focusOn(this.list[(this.list.indexOf(grip) + next + this.list.length) % this.list.length]);
      return;
    }
    const arrow = ARROWS[event.key];
    if (!arrow || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    this.#page.nudge(grip, arrow, event.shiftKey ? 10 : 1);
    this.arrange();
  }

  #focusOn(grip) {
    this.list.forEach((each) => {
      each.knob.tabIndex = each === grip ? 0 : -1;
    });
    grip.knob.focus({ preventScroll: true });
  }
}

/** Whether two are the same grip, wherever it stands. */
function same(a, b) {
  return ['field', 'row', 'part'].every((name) => a[name] === b[name]);
}

/** The direction in which a knob is farthest from everything else, within the picture. */
function freest([x, y], others, own, corner) {
  let best = null;
  for (let i = 0; i < DIRECTIONS; i++) {
    const a = (2 * Math.PI * i) / DIRECTIONS;
    const away = [KNOB * Math.cos(a), KNOB * Math.sin(a)];
    const at = [x + away[0], y + away[1]];
    const room = Math.min(
      ...others.filter((each) => each !== own).map((o) => Math.hypot(o[0] - at[0], o[1] - at[1])),
    );
    const outside =
      at[0] < corner.left + 22 || at[0] > corner.right - 22 || at[1] < corner.top + 22 || at[1] > corner.bottom - 22;
    const worth = Math.min(room, 60) - (outside ? 100 : 0);
    if (!best || worth > best.worth) {
      best = { worth, away };
    }
  }
  return best.away;
}
