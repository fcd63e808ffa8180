// Draws the charts of a page with uPlot from the numbers that each carries, so that they can be
// read off: by pointing, or with the slider below. Without script the picture and the table stay.

const COLOURS = {
  "curve-1": "--drawing-cold",
  "curve-2": "--drawing-mild",
  "curve-3": "--drawing-hot",
  "curve-4": "--drawing-violet",
  "curve-5": "--drawing-ochre",
  fast: "--drawing-mild",
  limit: "--drawing-stop",
  metal: "--drawing-soft",
};
const HEIGHT = 300;
const BAR = 6;
const FONT = "12px system-ui, sans-serif";

const drawn = new Map();

const dark = window.matchMedia("(prefers-color-scheme: dark)");
dark.addEventListener("change", () => {
  for (const figure of [...drawn.keys()]) {
    remove(figure);
    draw(figure);
  }
});

const sizes = new ResizeObserver((entries) => {
  for (const { target } of entries) {
    const plot = drawn.get(target.closest("figure"));
    if (plot && target.clientWidth && target.clientWidth !== plot.width) {
      plot.setSize({ width: target.clientWidth, height: HEIGHT });
    }
  }
});

function renew() {
  for (const figure of [...drawn.keys()]) {
    if (!figure.isConnected) {
      remove(figure);
    }
  }
  for (const figure of document.querySelectorAll("figure[data-chart]")) {
    if (!drawn.has(figure)) {
      draw(figure);
    }
  }
}

function remove(figure) {
  drawn.get(figure).destroy();
  drawn.delete(figure);
  figure.querySelector(".live")?.remove();
}

function colour(name) {
  return getComputedStyle(document.documentElement).getPropertyValue(name).trim();
}

function format(decimals) {
  const numbers = new Intl.NumberFormat(document.documentElement.lang, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
  });
  return (value) => (value == null ? "–" : numbers.format(value).replace("-", "−"));
}

function draw(figure) {
  const chart = JSON.parse(figure.dataset.chart);
  const picture = figure.querySelector("svg");
  const place = document.createElement("div");
  place.className = "live";
  picture.after(place);
  const say = { x: format(chart.along.decimals), y: format(chart.up.decimals) };
  const lines = [...chart.series, ...chart.levels.map((level) => levelled(level, chart.x))];
  const reading = reader(figure, chart, lines, say);
  const plot = new uPlot(
    options(chart, lines, say, place.clientWidth || 320, reading.moved),
    [chart.x, ...lines.map((line) => line.y)],
    place,
  );
  // The canvas is a picture: it is called what the picture in its place is called.
  const canvas = plot.root.querySelector(".u-wrap");
  canvas.setAttribute("role", "img");
  canvas.setAttribute("aria-label", picture.querySelector("title").textContent);
  place.append(...chart.marks.map(told), reading.slider);
  drawn.set(figure, plot);
  sizes.observe(place);
  reading.start(plot);
}

function levelled(level, xs) {
  return { ...level, look: "level", y: xs.map(() => level.y) };
}

function options(chart, lines, say, width, moved) {
  const ink = colour("--drawing-soft");
  const axis = (measure) => ({
    label: measure.name,
    labelFont: FONT,
    font: FONT,
    stroke: ink,
    grid: { stroke: colour("--drawing-faint"), width: 1 },
    ticks: { show: false },
    values: (plot, values, index, space, step) => {
      // As many as the step has: 2.5 needs one.
      const decimals = [0, 1, 2, 3].find((few) => Number.isInteger(+(step * 10 ** few).toFixed(6)));
      return values.map(format(decimals ?? 4));
    },
  });
  return {
    width,
    height: HEIGHT,
    scales: { x: { time: false } },
    axes: [axis(chart.along), { ...axis(chart.up), size: 56 }],
    series: [
      { label: chart.along.name, value: (plot, value) => say.x(value) },
      ...lines.map((line) => series(line, say)),
    ],
    bands: chart.bands.map((band) => ({
      series: upperFirst(band, chart.series),
      fill: `${colour(COLOURS[chart.series[band.upper].role])}24`,
    })),
    cursor: { y: false, drag: { x: false, y: false }, points: { size: 7 } },
    hooks: {
      setCursor: [moved],
      draw: [(plot) => stretches(plot, chart), (plot) => marks(plot, chart)],
    },
  };
}

// A weak spring takes more hand to open: which edge is above is seen from the numbers.
function upperFirst({ lower, upper }, all) {
  const sum = (i) => all[i].y.reduce((total, y) => total + (y ?? 0), 0);
  return (sum(upper) < sum(lower) ? [lower, upper] : [upper, lower]).map((i) => i + 1);
}

function series(line, say) {
  const dashes = line.role === "fast" || line.look === "dashed";
  const widths = { edge: 0.6, level: 1.2 };
  return {
    label: line.name,
    stroke: colour(COLOURS[line.role]),
    width: widths[line.look] ?? 1.8,
    dash: line.look === "level" ? [8, 4] : dashes ? [5, 4] : undefined,
    points: { show: false },
    value: (plot, value) => say.y(value),
  };
}

// Bars at the foot: what the load does by itself there.
function stretches(plot, chart) {
  const { left, top, width, height } = plot.bbox;
  const thick = BAR * devicePixelRatio;
  for (const stretch of chart.stretches) {
    const from = Math.max(left, plot.valToPos(stretch.from, "x", true));
    const to = Math.min(left + width, plot.valToPos(stretch.to, "x", true));
    plot.ctx.fillStyle = colour(COLOURS[stretch.role]);
    plot.ctx.fillRect(from, top + height - thick, to - from, thick);
  }
}

// Rings about the places that are told of below the chart.
function marks(plot, chart) {
  const { ctx } = plot;
  for (const mark of chart.marks) {
    const at = [plot.valToPos(mark.x, "x", true), plot.valToPos(mark.y, "y", true)];
    for (const [radius, look] of [[5, COLOURS[mark.role]], [2.5, "--drawing-ink"]]) {
      ctx.beginPath();
      ctx.arc(...at, radius * devicePixelRatio, 0, 2 * Math.PI);
      ctx.fillStyle = colour(look);
      ctx.fill();
    }
  }
}

function told(mark) {
  const line = document.createElement("p");
  line.className = "soft small";
  line.textContent = `● ${mark.name}`;
  return line;
}

// A slider through the samples that goes with the pointer, and says aloud what it stands at.
function reader(figure, chart, lines, say) {
  const slider = document.createElement("label");
  slider.className = "reading";
  const name = document.createElement("span");
  name.textContent = figure.dataset.read;
  const range = document.createElement("input");
  Object.assign(range, { type: "range", min: 0, max: chart.x.length - 1, step: 1 });
  range.value = Math.floor(chart.x.length / 2);
  const free = document.createElement("output");
  slider.append(name, range, free);

  function tell(index) {
    const x = chart.x[index];
    const stretch = chart.stretches.find((each) => x >= each.from && x <= each.to);
    free.textContent = stretch ? `${figure.dataset.free}: ${stretch.name}` : "";
    const values = lines.map((line) => `${line.name} ${say.y(line.y[index])}`);
    const words = [`${chart.along.name} ${say.x(x)}`, ...values, free.textContent];
    range.setAttribute("aria-valuetext", words.filter(Boolean).join("; "));
  }

  // The cursor leaves with the pointer; what was read stays.
  function moved(plot) {
    const index = plot.cursor.idx;
    if (index != null && index !== Number(range.value)) {
      range.value = index;
      tell(index);
    }
  }

  function show(plot) {
    const index = Number(range.value);
    const left = plot.valToPos(chart.x[index], "x");
    plot.setCursor({ left, top: plot.over.clientHeight / 2 });
    tell(index);
  }

  function start(plot) {
    range.addEventListener("input", () => show(plot));
    plot.over.addEventListener("mouseleave", () => show(plot));
    show(plot);
  }

  return { slider, moved, start };
}

renew();
new MutationObserver(renew).observe(document.querySelector("main"), {
  childList: true,
  subtree: true,
});
