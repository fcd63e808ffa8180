// Zones for mounts as input: corners and whole zones are dragged or moved by keys, and the fields of the form follow.
import { Drawing, inches, written } from './drawing.js';
import { Grips } from './grips.js';
import { History } from './history.js';
import { Places } from './places.js';
import { Steps, answer } from './steps.js';

const KEEP_OUT = 'zones.keepOutMm';

const form = document.querySelector('form.zones');
const layer = document.querySelector('.grips');
if (form && layer) {
  start();
}

function start() {
  const snap = document.getElementById('snap');
  const keepOuts = form.elements[KEEP_OUT];
  const history = new History(form, document.getElementById('undo'), document.getElementById('redo'));
  const drawing = new Drawing(() => document.getElementById('view'));
  const steps = new Steps(step);
  const places = new Places(form, () => steps.step(true));
  const grips = new Grips(layer, drawing, { place, label, looks, drag, nudge, release });
  const drawn = places.held; // the zones that the page was made for, and that are searched

  function place(grip) {
    return [grip.x, grip.y];
  }

  function looks(grip) {
    return grip.part === 'whole' ? 'grip turns' : 'grip';
  }

  function label(grip) {
    return `${grip.label}, x ${written(grip.x)}, y ${written(grip.y)} ${inches() ? 'in' : 'mm'}`;
  }

  // ---- zones and their fields

  /** The grips of one zone by what they move. */
  function zone(of) {
    const own = grips.list.filter((each) => each.field === of.field && each.row === of.row);
    return Object.fromEntries(own.map((each) => [each.part, each]));
  }

  /** Onto the grid of steps; a corner goes no farther than the other, so that lines and points can be made. */
  function move(grip, to) {
    const { low, high, whole } = zone(grip);
    if (!low) {
      return; // taken away while the move waited
    }
    const by = Number(snap.value);
    ['x', 'y'].forEach((axis, i) => {
      const at = (value) => Math.round(value / by) * by;
      if (grip === low) {
        low[axis] = Math.min(at(to[i]), high[axis]);
      } else if (grip === high) {
        high[axis] = Math.max(at(to[i]), low[axis]);
      } else {
        const size = high[axis] - low[axis];
        low[axis] = at(to[i] - size / 2);
        high[axis] = low[axis] + size;
      }
      whole[axis] = (low[axis] + high[axis]) / 2;
    });
    write(low, high);
    noteChange();
    steps.step(true);
  }

  function write(low, high) {
    if (low.field === KEEP_OUT) {
      const rows = grips.list.filter((each) => each.field === KEEP_OUT && each.part === 'low').map(zone);
      keepOuts.value = rows
        .map((each) => [each.low.x, each.high.x, each.low.y, each.high.y].map((mm) => written(mm, true)).join(','))
        .join('\n');
      return;
    }
    ['x', 'y'].forEach((axis) => {
      const ends = form.elements[`${low.field}.${axis}`];
      ends[0].value = written(low[axis]);
      ends[1].value = written(high[axis]);
    });
  }

  /** What was found was found in other zones. */
  function noteChange() {
    document.getElementById('zones-changed').hidden = !document.querySelector('.arrangements');
  }

  function drag(grip, at) {
    places.move(() => move(grip, at));
  }

  function nudge(grip, [across, up], far) {
    const by = Number(snap.value) * far;
    places.move(() => {
      move(grip, [grip.x + across * by, grip.y + up * by]);
      history.keep();
    });
  }

  function release(grip, moved) {
    if (moved) {
      places.move(() => {
        history.keep();
        steps.step(true);
      });
    }
  }

  /** A rectangle in the middle of the drawing, to be moved to where it is meant. */
  function addKeepOut() {
    const box = drawing.svg.viewBox.baseVal;
    const { left, top, scale } = drawing.scene;
    const [x, y] = [left + (box.x + box.width / 2) / scale, top - (box.y + box.height / 2) / scale];
    const half = box.width / scale / 16;
    const line = [x - half, x + half, y - half, y + half].map((mm) => written(Math.round(mm), true)).join(',');
    keepOuts.value = [keepOuts.value.trim(), line].filter(Boolean).join('\n');
    keepOuts.closest('details').open = true;
    history.keep();
    noteChange();
    steps.step(true);
  }

  // ---- steps

  async function step() {
    const asked = places.held;
    const page = await answer('/mounts/step', asked);
    const stepped = page?.getElementById('stepped');
    const scene = stepped?.dataset.scene ? JSON.parse(stepped.dataset.scene) : null;
    if (scene) {
      drawing.take(stepped.querySelector('svg'), scene);
    }
    show(asked, scene);
  }

  function show(asked, scene) {
    layer.hidden = !drawing.scene;
    if (!layer.hidden) {
      places.answered(asked, scene && (() => grips.put(scene.grips)));
      grips.arrange();
    }
  }

  /** What the server drew for the page or for a search; another drawing where the zones are others by now. */
  function read() {
    const scene = drawing.read();
    if (scene) {
      show(drawn, scene);
      if (places.held !== drawn) {
        steps.step(true);
      }
    }
  }

  document.querySelector('.turning').hidden = false;
  document.getElementById('add-keep-out').addEventListener('click', addKeepOut);
  form.addEventListener('input', () => {
    noteChange();
    steps.step(true);
  });
  form.addEventListener('restored', () => {
    noteChange();
    steps.step(true);
  });
  document.body.addEventListener('htmx:afterSettle', read);
  read();
}
