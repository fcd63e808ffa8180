// The side view as input: its points are dragged or moved by keys, the fields of the form follow,
// and one spring is judged at every step. The ranking follows on release, through the form.
import { History } from './history.js';

const MM_PER_INCH = 25.4;
const KNOB = 36; // px from a point to its knob, so that a finger does not cover what it moves
const DIRECTIONS = 16;

const form = document.getElementById('job');
const stage = document.querySelector('.stage');
const layer = document.querySelector('.grips');
if (form && layer) {
  start();
}

function start() {
  const turn = document.getElementById('turn');
  const turned = document.getElementById('turned');
  const snap = document.getElementById('snap');
  const history = new History(form, document.getElementById('undo'), document.getElementById('redo'));
  // A sheet of its own: the content policy allows no style at an element that htmx may copy.
  const sheet = new CSSStyleSheet();
  document.adoptedStyleSheets.push(sheet);
  const inches = snap.options[0].text.endsWith('in');
  let scene = null;
  let shown = 0; // how far it is opened in the drawing, ° or mm
  let grips = [];
  let kept = null; // the part of the drawing, mm, that is shown while something is dragged
  let busy = false;
  let again = null;

  const view = () => document.getElementById('view');
  const svg = () => view().querySelector('svg');

  // ---- places

  function rotated([x, y], degrees) {
    const a = (degrees * Math.PI) / 180;
    return [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)];
  }

  function carried([x, y], by) {
    if (scene.sense) {
      return rotated([x, y], scene.sense * by);
    }
    return [x + by * Math.cos(scene.direction), y + by * Math.sin(scene.direction)];
  }

  function toScreen([x, y]) {
    const at = new DOMPoint((x - scene.left) * scene.scale, (scene.top - y) * scene.scale);
    const on = at.matrixTransform(svg().getScreenCTM());
    return [on.x, on.y];
  }

  function toPlace(x, y) {
    const at = new DOMPoint(x, y).matrixTransform(svg().getScreenCTM().inverse());
    return [at.x / scene.scale + scene.left, scene.top - at.y / scene.scale];
  }

  function place(grip) {
    if (grip.turns) {
      const tip = grips.find((each) => each.field === 'load.handleMm');
      return carried([tip.x, tip.y], shown);
    }
    return grip.moves ? carried([grip.x, grip.y], shown) : [grip.x, grip.y];
  }

  // ---- fields

  const input = (grip, axis) => form.elements[`${grip.field}.${axis}`];

  function written(mm) {
    const number = inches ? +(mm / MM_PER_INCH).toFixed(4) : +mm.toFixed(1);
    const text = String(number);
    return document.documentElement.lang.startsWith('de') ? text.replace('.', ',') : text;
  }

  function move(grip, [x, y]) {
    const step = Number(snap.value);
    grip.x = Math.round(x / step) * step;
    grip.y = Math.round(y / step) * step;
    input(grip, 'x').value = written(grip.x);
    input(grip, 'y').value = written(grip.y);
  }

  function turnTo(by) {
    shown = Math.max(0, Math.min(scene.end, by));
    turn.value = shown;
    tell();
  }

  function tell() {
    const length = inches ? `${(shown / MM_PER_INCH).toFixed(1)} in` : `${Math.round(shown)} mm`;
    turned.value = scene.sense ? `${Math.round(shown)}°` : length;
    turn.setAttribute('aria-valuetext', turned.value);
  }

  /** The ranking follows, after the same pause as for typing. */
  function release(grip) {
    history.keep();
    input(grip, 'x').dispatchEvent(new Event('input', { bubbles: true }));
  }

  // ---- steps

  async function step(judged) {
    if (busy) {
      again = again || judged;
      return;
    }
    busy = true;
    again = null;
    const asked = new URLSearchParams(new FormData(form));
    asked.set('pick', view().dataset.pick || '');
    asked.set('shown-at', shown);
    try {
      const answer = await fetch(`${new URL(form.action).pathname}/step?${asked}`);
      if (answer.ok) {
        take(new DOMParser().parseFromString(await answer.text(), 'text/html'), judged);
      }
    } finally {
      busy = false;
      if (again !== null) {
        step(again);
      }
    }
  }

  function take(page, judged) {
    const stepped = page.getElementById('stepped');
    if (stepped.dataset.scene) {
      const drawn = JSON.parse(stepped.dataset.scene);
      Object.assign(scene, { left: drawn.left, top: drawn.top, scale: drawn.scale, end: drawn.end });
      turn.max = scene.end;
      svg().replaceWith(stepped.querySelector('svg'));
      hold();
      arrange();
    }
    if (judged) {
      document.querySelector('#verdict .verdict')?.replaceWith(page.getElementById('said'));
      document.getElementById('held').replaceChildren(...page.getElementById('kept').childNodes);
      document.querySelectorAll('#result, .glance').forEach((each) => each.setAttribute('aria-busy', 'true'));
    }
    view().dispatchEvent(new CustomEvent('stepped', { bubbles: true }));
  }

  function keepWindow() {
    const box = svg().viewBox.baseVal;
    kept = {
      left: scene.left + box.x / scene.scale,
      top: scene.top - box.y / scene.scale,
      width: box.width / scene.scale,
      height: box.height / scene.scale,
    };
  }

  /** What is dragged stays under the pointer: the drawing does not jump to another scale. */
  function hold() {
    if (kept) {
      const { scale, left, top } = scene;
      const box = [kept.left - left, top - kept.top, kept.width, kept.height];
      svg().setAttribute('viewBox', box.map((each) => each * scale).join(' '));
    }
  }

  // ---- grips

  function make(grip, first) {
    const knob = document.createElement('button');
    knob.type = 'button';
    knob.className = grip.turns ? 'grip turns' : 'grip';
    knob.tabIndex = first ? 0 : -1;
    knob.addEventListener('pointerdown', (event) => dragged(grip, event));
    knob.addEventListener('keydown', (event) => keyed(grip, event));
    layer.append(knob);
    grip.knob = knob;
    name(grip);
  }

  function name(grip) {
    const at = grip.turns
      ? turned.value
      : `x ${written(grip.x)}, y ${written(grip.y)} ${inches ? 'in' : 'mm'}`;
    grip.knob.setAttribute('aria-label', `${grip.label}: ${at}`);
    grip.knob.title = grip.label;
  }

  function arrange() {
    if (!svg() || !scene) {
      return;
    }
    const corner = stage.getBoundingClientRect();
    const points = grips.map((grip) => toScreen(place(grip)));
    const knobs = [];
    const rules = [];
    grips.forEach((grip, i) => {
      if (!grip.held) {
        grip.away = freest(points[i], [...points, ...knobs], points[i], corner);
      }
      const at = [points[i][0] + grip.away[0], points[i][1] + grip.away[1]];
      knobs.push(at);
      const toward = Math.atan2(-grip.away[1], -grip.away[0]);
      const place = `left: ${at[0] - corner.left}px; top: ${at[1] - corner.top}px; --toward: ${toward}rad`;
      rules.push(`.grip:nth-child(${i + 1}) { ${place} }`);
      name(grip);
    });
    sheet.replaceSync(rules.join(''));
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

  function dragged(grip, down) {
    if (down.button !== 0) {
      return;
    }
    down.preventDefault();
    focusOn(grip);
    grip.held = true;
    const { knob } = grip;
    knob.setPointerCapture(down.pointerId);
    const point = toScreen(place(grip));
    const off = [point[0] - down.clientX, point[1] - down.clientY];
    keepWindow();
    const before = [grip.x, grip.y];
    const moved = (event) => {
      const at = toPlace(event.clientX + off[0], event.clientY + off[1]);
      if (grip.turns) {
        turnTo(Math.round(opened(at)));
      } else {
        move(grip, grip.moves ? carried(at, -shown) : at);
      }
      arrange();
      step(!grip.turns);
    };
    const up = () => {
      knob.removeEventListener('pointermove', moved);
      knob.removeEventListener('pointerup', up);
      knob.removeEventListener('pointercancel', up);
      grip.held = false;
      kept = null;
      if (!grip.turns && (grip.x !== before[0] || grip.y !== before[1])) {
        release(grip);
      }
      step(false);
    };
    knob.addEventListener('pointermove', moved);
    knob.addEventListener('pointerup', up);
    knob.addEventListener('pointercancel', up);
  }

  /** How far the flap is open when its edge points to a place, °. */
  function opened([x, y]) {
    const tip = grips.find((each) => each.field === 'load.handleMm');
    const from = Math.atan2(tip.y, tip.x);
    const degrees = (scene.sense * (Math.atan2(y, x) - from) * 180) / Math.PI;
    const round = ((degrees % 360) + 360) % 360;
    return round > (scene.end + 360) / 2 ? 0 : round;
  }

  const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

  function keyed(grip, event) {
    const next = { PageDown: 1, PageUp: -1 }[event.key];
    if (next) {
      event.preventDefault();
      focusOn(grips[(grips.indexOf(grip) + next + grips.length) % grips.length]);
      return;
    }
    const arrow = ARROWS[event.key];
    if (!arrow || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    const far = event.shiftKey ? 10 : 1;
    if (grip.turns) {
      turnTo(Math.round(shown) + far * (arrow[0] + arrow[1]));
      arrange();
      step(false);
      return;
    }
    const by = Number(snap.value) * far;
    move(grip, [grip.x + arrow[0] * by, grip.y + arrow[1] * by]);
    arrange();
    step(true);
    release(grip);
  }

  function focusOn(grip) {
    grips.forEach((each) => {
      each.knob.tabIndex = each === grip ? 0 : -1;
    });
    grip.knob.focus({ preventScroll: true });
  }

  // ---- the page

  /** What the server drew last; grips are made once and then only moved. */
  function read() {
    const data = view().dataset.scene;
    layer.hidden = !data;
    if (!data) {
      return;
    }
    scene = JSON.parse(data);
    turn.max = scene.end;
    shown = Math.min(shown, scene.end);
    tell();
    if (!grips.length) {
      grips = scene.grips;
      if (scene.sense) {
        grips.push({ turns: true, label: layer.dataset.edge });
      }
      grips.forEach((grip, i) => make(grip, i === 0));
    } else {
      scene.grips.forEach((each) => {
        const grip = grips.find((known) => known.field === each.field);
        if (!grip.held) {
          Object.assign(grip, { x: each.x, y: each.y });
        }
      });
    }
    arrange();
    if (shown > 0) {
      step(false);
    }
  }

  document.querySelector('.turning').hidden = false;
  turn.value = 0;
  read();
  turn.addEventListener('input', () => {
    turnTo(Number(turn.value));
    arrange();
    step(false);
  });
  document.body.addEventListener('htmx:afterSettle', (event) => {
    if (event.target.id === 'result' || event.detail.target?.id === 'result') {
      document.getElementById('result').removeAttribute('aria-busy');
      read();
    }
  });
  new ResizeObserver(arrange).observe(stage);
  window.addEventListener('load', arrange);
}
