// The side view as input: its points are dragged or moved by keys, the fields of the form follow,
// and one spring is judged at every step. The ranking follows on release, through the form.
import { Drawing, inches, written } from './drawing.js';
import { Grips } from './grips.js';
import { History } from './history.js';
import { Places } from './places.js';
import { Steps, answer } from './steps.js';

const MM_PER_INCH = 25.4;

const form = document.getElementById('job');
const layer = document.querySelector('.grips');
if (form && layer) {
  start();
}

function start() {
  const turn = document.getElementById('turn');
  const turned = document.getElementById('turned');
  const snap = document.getElementById('snap');
  const view = () => document.getElementById('view');
  const history = new History(form, document.getElementById('undo'), document.getElementById('redo'));
  const drawing = new Drawing(view);
  const steps = new Steps(step);
  const places = new Places(form, () => steps.step(true));
  const grips = new Grips(layer, drawing, { place, label, looks, drag, nudge, release });
  const asked = new WeakMap(); // what the form held, by request for a ranking
  let shown = 0; // how far it is opened in the drawing, ° or mm
  let ranked = 0; // how many rankings have come of what the form held when they came

  // ---- places

  function rotated([x, y], degrees) {
    const a = (degrees * Math.PI) / 180;
    return [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)];
  }

  function carried([x, y], by) {
    const { sense, direction } = drawing.scene;
    return sense ? rotated([x, y], sense * by) : [x + by * Math.cos(direction), y + by * Math.sin(direction)];
  }

  const tip = () => grips.list.find((each) => each.field === 'load.handleMm');

  function place(grip) {
    if (grip.turns) {
      return carried([tip().x, tip().y], shown);
    }
    return grip.moves ? carried([grip.x, grip.y], shown) : [grip.x, grip.y];
  }

  // ---- fields

  const input = (grip, axis) => form.elements[`${grip.field}.${axis}`];

  function move(grip, [x, y]) {
    const by = Number(snap.value);
    grip.x = Math.round(x / by) * by;
    grip.y = Math.round(y / by) * by;
    input(grip, 'x').value = written(grip.x);
    input(grip, 'y').value = written(grip.y);
  }

  function turnTo(by) {
    shown = Math.max(0, Math.min(drawing.scene.end, by));
    turn.value = shown;
    tell();
  }

  function tell() {
    const length = inches() ? `${(shown / MM_PER_INCH).toFixed(1)} in` : `${Math.round(shown)} mm`;
    turned.value = drawing.scene.sense ? `${Math.round(shown)}°` : length;
    turn.setAttribute('aria-valuetext', turned.value);
  }

  /** The ranking follows, after the same pause as for typing. */
  function settle() {
    history.keep();
    form.dispatchEvent(new Event('moved'));
  }

  // ---- steps

  async function step(judged) {
    const [held, before] = [places.held, ranked];
    const page = await answer(`${new URL(form.action).pathname}/step`, held, {
      pick: view().dataset.pick || '',
      'shown-at': shown,
    });
    const stepped = page?.getElementById('stepped');
    const scene = stepped?.dataset.scene ? JSON.parse(stepped.dataset.scene) : null;
    // What came of the form as it was then is not drawn over a ranking of it as it is now.
    if (page && ranked === before) {
      if (scene) {
        const { left, top, scale, end } = scene;
        drawing.take(stepped.querySelector('svg'), { ...drawing.scene, left, top, scale, end });
        turn.max = end;
      }
      if (judged) {
        judge(page);
      }
    }
    show(held, scene);
  }

  function judge(page) {
    document.querySelector('#verdict .verdict')?.replaceWith(page.getElementById('said'));
    document.getElementById('held').replaceChildren(...page.getElementById('kept').childNodes);
    document.querySelectorAll('#result, .glance').forEach((each) => each.setAttribute('aria-busy', 'true'));
  }

  function show(held, scene) {
    const edge = drawing.scene.sense ? [{ turns: true, label: layer.dataset.edge }] : [];
    places.answered(held, scene && (() => grips.put([...scene.grips, ...edge])));
    grips.arrange();
  }

  // ---- grips

  function looks(grip) {
    return grip.turns ? 'grip turns' : 'grip';
  }

  function label(grip) {
    const at = grip.turns ? turned.value : `x ${written(grip.x)}, y ${written(grip.y)} ${inches() ? 'in' : 'mm'}`;
    return `${grip.label}: ${at}`;
  }

  function drag(grip, at) {
    if (grip.turns) {
      turnTo(Math.round(opened(at)));
      steps.step(false);
      return;
    }
    places.move(() => {
      grip.from ??= [grip.x, grip.y];
      move(grip, grip.moves ? carried(at, -shown) : at);
      steps.step(true);
    });
  }

  function release(grip) {
    places.move(() => {
      if (grip.from && (grip.x !== grip.from[0] || grip.y !== grip.from[1])) {
        settle();
      }
      delete grip.from;
      steps.step(false);
    });
  }

  function nudge(grip, [across, up], far) {
    if (grip.turns) {
      turnTo(Math.round(shown) + far * (across + up));
      steps.step(false);
      return;
    }
    const by = Number(snap.value) * far;
    places.move(() => {
      move(grip, [grip.x + across * by, grip.y + up * by]);
      steps.step(true);
      settle();
    });
  }

  /** How far the flap is open when its edge points to a place, °. */
  function opened([x, y]) {
    const from = Math.atan2(tip().y, tip().x);
    const { sense, end } = drawing.scene;
    const degrees = (sense * (Math.atan2(y, x) - from) * 180) / Math.PI;
    const round = ((degrees % 360) + 360) % 360;
    return round > (end + 360) / 2 ? 0 : round;
  }

  // ---- the page

  /** What the server drew anew, for what the form held then. */
  function read(held) {
    const scene = drawing.read();
    layer.hidden = !drawing.scene;
    if (layer.hidden) {
      return;
    }
    turn.max = drawing.scene.end;
    shown = Math.min(shown, drawing.scene.end);
    tell();
    show(held, scene);
    if (shown > 0) {
      steps.step(false);
    }
  }

  document.querySelector('.turning').hidden = false;
  turn.value = 0;
  read(places.held);
  turn.addEventListener('input', () => {
    turnTo(Number(turn.value));
    grips.arrange();
    steps.step(false);
  });
  document.body.addEventListener('htmx:beforeRequest', ({ detail }) => {
    if (detail.target.id === 'result') {
      asked.set(detail.xhr, places.held);
    }
  });
  // It comes once for each element of the answer.
  document.body.addEventListener('htmx:afterSettle', ({ detail }) => {
    const held = asked.get(detail.xhr);
    if (!asked.delete(detail.xhr)) {
      return;
    }
    if (held === places.held) {
      ranked++;
      document.getElementById('result').removeAttribute('aria-busy');
    }
    read(held);
  });
}
