// Plays a drawing whose groups carry their tracks: "turn x y" at even times, joined by semicolons.
// Nothing moves until it is asked to; without script the drawing is a still with ghosts.

const SLOWLY = 5;

for (const figure of document.querySelectorAll("figure[data-seconds]")) {
  if (figure.querySelector(".player")) {
    player(figure);
  }
}

function player(figure) {
  const seconds = Number(figure.dataset.seconds);
  const tracks = [...figure.querySelectorAll("[data-track]")].map(track);
  const controls = figure.querySelector(".player");
  const button = controls.querySelector("button");
  const slowly = controls.querySelector(".slowly");
  const slider = controls.querySelector("input[type=range]");
  const output = controls.querySelector("output");
  const still = window.matchMedia("(prefers-reduced-motion: reduce)");
  const words = { play: button.textContent, pause: button.dataset.pause };
  const format = new Intl.NumberFormat(document.documentElement.lang, {
    minimumFractionDigits: 2,
    maximumFractionDigits: 2,
  });
  let share = 0;
  let frame = 0;
  let before = 0;

  function show() {
    tracks.forEach((place) => place(share));
    slider.value = share;
    output.textContent = `${format.format(share * seconds)} s`;
    slider.setAttribute("aria-valuetext", output.textContent);
  }

  function pause() {
    cancelAnimationFrame(frame);
    frame = 0;
    button.textContent = words.play;
  }

  function step(now) {
    const pace = slowly.checked ? SLOWLY : 1;
    // A frame may have begun before it was asked for.
    share = Math.min(1, share + Math.max(0, now - before) / 1000 / pace / seconds);
    before = now;
    show();
    frame = share < 1 ? requestAnimationFrame(step) : 0;
    if (!frame) {
      pause();
    }
  }

  function play() {
    share = share < 1 ? share : 0;
    before = performance.now();
    button.textContent = words.pause;
    frame = requestAnimationFrame(step);
  }

  // Who asked for less motion gets the next still instead.
  function next() {
    share = share < 1 ? Math.min(1, share + 0.1) : 0;
    show();
  }

  button.addEventListener("click", () => (still.matches ? next() : frame ? pause() : play()));
  slider.addEventListener("input", () => {
    pause();
    share = Number(slider.value);
    show();
  });
  still.addEventListener("change", pause);
  controls.hidden = false;
  show();
}

// Sets a group to where it is at a share of the time, between the two nearest of its track.
function track(group) {
  const pivot = group.dataset.pivot;
  const poses = group.dataset.track.split(";").map((pose) => pose.split(" ").map(Number));
  const last = poses.length - 1;
  return (share) => {
    const at = share * last;
    const i = Math.min(Math.floor(at), Math.max(0, last - 1));
    const to = poses[Math.min(i + 1, last)];
    const [turn, x, y] = poses[i].map((from, k) => from + (at - i) * (to[k] - from));
    group.setAttribute("transform", `translate(${x} ${y}) rotate(${turn} ${pivot})`);
  };
}
