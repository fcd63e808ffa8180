// The side view as input: its points are dragged or moved by keys, the fields of the form follow,
// and one spring is judged at every step. The ranking follows on release, through the form.
import { Drawing, inches, written } from './drawing.js';
import { Grips } from './grips.js';
import { History } from './history.js';
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
  const grips = new Grips(layer, drawing, { place, label, looks, drag, nudge, release });
  let shown = 0; // how far it is opened in the drawing, ° or mm

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
  function settle(grip) {
    history.keep();
    input(grip, 'x').dispatchEvent(new Event('input', { bubbles: true }));
  }

  // ---- steps

  async function step(judged) {
    const page = await answer(form, `${new URL(form.action).pathname}/step`, {
      pick: view().dataset.pick || '',
      'shown-at': shown,
    });
    if (page) {
      take(page, judged);
    }
  }

  function take(page, judged) {
    const stepped = page.getElementById('stepped');
    if (stepped.dataset.scene) {
      const { left, top, scale, end } = JSON.parse(stepped.dataset.scene);
      drawing.take(stepped.querySelector('svg'), { ...drawing.scene, left, top, scale, end });
      turn.max = end;
      grips.arrange();
    }
    if (judged) {
      document.querySelector('#verdict .verdict')?.replaceWith(page.getElementById('said'));
      document.getElementById('held').replaceChildren(...page.getElementById('kept').childNodes);
      document.querySelectorAll('#result, .glance').forEach((each) => each.setAttribute('aria-busy', 'true'));
    }
    view().dispatchEvent(new CustomEvent('stepped', { bubbles: true }));
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
    } else {
      grip.from ??= [grip.x, grip.y];
      move(grip, grip.moves ? carried(at, -shown) : at);
    }
    steps.step(!grip.turns);
  }

  function release(grip) {
    if (grip.from && (grip.x !== grip.from[0] || grip.y !== grip.from[1])) {
      settle(grip);
    }
    delete grip.from;
    steps.step(false);
  }

  function nudge(grip, [across, up], far) {
    if (grip.turns) {
      turnTo(Math.round(shown) + far * (across + up));
      steps.step(false);
      return;
    }
    const by = Number(snap.value) * far;
    move(grip, [grip.x + across * by, grip.y + up * by]);
    steps.step(true);
    settle(grip);
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

  /** What the server drew last; grips are made once and then only moved. */
  function read() {
    layer.hidden = !drawing.read();
    if (layer.hidden) {
      return;
    }
    turn.max = drawing.scene.end;
    shown = Math.min(shown, drawing.scene.end);
    tell();
    if (!grips.list.length) {
      const edge = drawing.scene.sense ? [{ turns: true, label: layer.dataset.edge }] : [];
      grips.put([...drawing.scene.grips, ...edge]);
    } else {
      drawing.scene.grips.forEach((each) => {
        const grip = grips.list.find((known) => known.field === each.field);
        if (!grip.held) {
          Object.assign(grip, { x: each.x, y: each.y });
        }
      });
    }
    grips.arrange();
    if (shown > 0) {
      steps.step(false);
    }
  }

  document.querySelector('.turning').hidden = false;
  turn.value = 0;
  read();
  turn.addEventListener('input', () => {
    turnTo(Number(turn.value));
    grips.arrange();
    steps.step(false);
  });
  document.body.addEventListener('htmx:afterSettle', (event) => {
    if (event.target.id === 'result' || event.detail.target?.id === 'result') {
      document.getElementById('result').removeAttribute('aria-busy');
      read();
    }
  });
}
