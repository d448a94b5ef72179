// The bench's page: the picture before the start and while it runs, the plate, the start that is held.
'use strict';
const SVG = 'http://www.w3.org/2000/svg';
const LEFT = 56;
const RIGHT = 836;
const LEAST_SHEET_S = 6;
const KEPT_S = 30;
const STALE_MS = 1000;
const HOLD_MS = 1000;
const main = document.querySelector('main[data-bench]');
const picture = document.getElementById('picture');

function draw(into, name, attributes, text) {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  if (text !== undefined) element.textContent = text;
  into.append(element);
  return element;
}

function put(id, text) {
  const element = document.getElementById(id);
  if (element && element.textContent !== text) element.textContent = text;
}

// One picture: lanes over one axis of time. Sheets of time follow one another; within one, nothing slides.
class Picture {
  constructor(svg) {
    this.svg = svg;
    this.plan = JSON.parse(svg.dataset.plan);
    const tall = Number(svg.dataset.height);
    const low = tall - 456;
    this.out = [34, 252 + low * 0.66];
    this.inp = [280 + low * 0.66, 380 + low];
    this.load = [408 + low, 430 + low];
    this.axis = 436 + low;
    this.starts = [];
    this.now = 0;
    this.inputVoid = false;
    this.kept = [];
    this.ground = draw(svg, 'g', {});
    this.lines = draw(svg, 'g', {});
    this.open(0, 0);
  }

  step() { return this.starts.length - 1; }

  startOf(index) {
    if (index < this.starts.length) return this.starts[index];
    let at = this.starts.length ? this.starts[this.starts.length - 1] : 0;
    for (let i = Math.max(0, this.starts.length - 1); i < index; i++) at += this.plan.steps[i].long;
    return at;
  }

  // A new sheet for a step: as many of the next steps of its sort as fit beside it.
  open(index, from, least = LEAST_SHEET_S, lead = 0.06) {
    const step = this.plan.steps[index];
    const end = from + Math.max(least, step.long * 1.2);
    this.from = from - (end - from) * lead;
    this.to = end;
    this.first = index;
    this.last = index;
    for (let i = index + 1; i < this.plan.steps.length; i++) {
      const next = this.plan.steps[i];
      if (next.hold !== step.hold || this.startOf(i) + next.long > end) break;
      this.last = i;
    }
    const bins = (RIGHT - LEFT) / 2;
    this.bins = Array.from({ length: bins }, () => null);
    this.kept.forEach((event) => this.fold(event)); // what came before it was known that a step begins
    this.scale();
    this.drawGround();
  }

  x(seconds) { return LEFT + (RIGHT - LEFT) * (seconds - this.from) / (this.to - this.from); }

  static y(value, range, lane) {
    const share = Math.max(-0.02, Math.min(1.02, (value - range[0]) / (range[1] - range[0])));
    return lane[1] - share * (lane[1] - lane[0]);
  }

  scale() {
    const steps = this.plan.steps.slice(this.first, this.last + 1);
    const floors = steps.map((s) => s.floor).filter((f) => f !== undefined);
    const room = this.plan.nominal / 24;
    let low = steps[0].hold && floors.length ? Math.floor(Math.min(...floors) - room) : 0;
    let high = Math.ceil(this.plan.nominal + room / 2);
    for (const bin of this.bins) {
      if (bin && bin[0] !== null) {
        low = Math.min(low, Math.floor(bin[0]));
        high = Math.max(high, Math.ceil(bin[1]));
      }
    }
    this.range = [low, high];
    const inputs = this.plan.steps.map((s) => s.input);
    this.inputRange = [this.plan.tolerated - (this.plan.good - this.plan.tolerated), Math.max(...inputs) * 1.08];
  }

  drawGround() {
    const g = this.ground;
    g.replaceChildren();
    const [low, high] = this.range;
    const by = [1, 2, 5, 10, 20, 50].find((n) => (high - low) / n <= 7) ?? 100;
    for (let v = Math.ceil(low / by) * by; v <= high; v += by) {
      const y = Picture.y(v, this.range, this.out);
      draw(g, 'path', { d: `M${LEFT} ${y}H${RIGHT}`, class: 'hair' });
      draw(g, 'text', { x: LEFT - 9, y: y + 5, class: 'ax', 'text-anchor': 'end' }, v + by > high ? v + ' V' : String(v));
    }
    draw(g, 'text', { x: LEFT - 4, y: 12, class: 'lane', 'text-anchor': 'end' }, 'Output'); // clear of the left jaw
    const y = (v) => Picture.y(v, this.inputRange, this.inp);
    const good = y(this.plan.good);
    const tolerated = y(this.plan.tolerated);
    draw(g, 'rect', { x: LEFT, y: good, width: RIGHT - LEFT, height: tolerated - good, fill: 'url(#dz)' });
    draw(g, 'rect', { x: LEFT, y: tolerated, width: RIGHT - LEFT, height: this.inp[1] - tolerated, fill: 'url(#hz)' });
    draw(g, 'path', { d: `M${LEFT} ${good}H${RIGHT}M${LEFT} ${tolerated}H${RIGHT}`, class: 'zone' });
    draw(g, 'text', { x: RIGHT + 10, y: good - 8, class: 'zl' }, 'valid');
    draw(g, 'text', { x: RIGHT + 10, y: (good + tolerated) / 2 + 5, class: 'zl' }, 'tolerated');
    draw(g, 'text', { x: RIGHT + 10, y: (tolerated + this.inp[1]) / 2 + 6, class: 'zl' }, 'void');
    for (const v of [this.plan.tolerated, this.plan.good, Math.max(...this.plan.steps.map((s) => s.input))]) {
      draw(g, 'text', { x: LEFT - 9, y: y(v) + 5, class: 'ax', 'text-anchor': 'end' }, v.toFixed(v % 1 ? 1 : 0) + (v > this.plan.good ? ' V' : ''));
    }
    draw(g, 'text', { x: LEFT, y: this.inp[0] - 10, class: 'lane' }, this.live ? 'Input' : 'Input, as it will be set');
    draw(g, 'text', { x: LEFT, y: this.load[0] - 6, class: 'lane' }, 'Load');
    const zero = this.startOf(this.first);
    const span = this.to - this.from;
    const tick = [0.5, 1, 2, 5, 10, 30, 60, 300].find((n) => span / n <= 9) ?? 600;
    for (let t = 0; zero + t <= this.to; t += tick) {
      const x = this.x(zero + t);
      draw(g, 'path', { d: `M${x} ${this.axis - 4}v8`, class: 'tick' });
      draw(g, 'text', { x, y: this.axis + 20, class: 'ax', 'text-anchor': 'middle' }, t === 0 ? '0 s' : String(t));
    }
    draw(g, 'path', { d: `M${LEFT} ${this.axis}H${RIGHT}`, class: 'tick' });
  }

  floor(g, step, from, to) {
    if (step.floor === undefined) return;
    const y = Picture.y(step.floor, this.range, this.out);
    draw(g, 'path', { d: `M${this.x(from) - 6} ${y}H${this.x(to) + 6}`, class: 'floor' });
    let strokes = '';
    for (let x = this.x(from); x < this.x(to) + 6; x += 9) strokes += `M${x} ${y + 1}l-4.3 7`;
    draw(g, 'path', { d: strokes, class: 'floort' });
  }

  jaws(g, from, to, words) {
    const [top, bottom] = this.out;
    for (const [x, side] of [[this.x(from), -1], [this.x(to), 1]]) {
      draw(g, 'path', { d: `M${x} 14V${bottom}`, class: 'jawl' });
      draw(g, 'path', { d: `M${x} 12h${side * 15}v12l${side * -11} 18h${side * -4}z`, class: 'jaw' });
    }
    const middle = (this.x(from) + this.x(to)) / 2;
    const wide = this.x(to) - this.x(from) > 190;
    if (wide) draw(g, 'path', { d: `M${this.x(from) + 3} 22H${this.x(to) - 3}`, class: 'dim' });
    const label = draw(g, 'text', { x: wide ? middle : this.x(to) + 22, y: 27, class: 'dimt', 'text-anchor': wide ? 'middle' : 'start' }, words);
    if (wide) {
      const box = draw(g, 'rect', { x: middle - 80, y: 10, width: 160, height: top - 12, class: 'bg' });
      g.insertBefore(box, label);
    }
  }

  windows(g, judgedTo) {
    for (let i = this.first; i <= this.last; i++) {
      const step = this.plan.steps[i];
      if (!step.judged || i > this.step() && this.live) continue;
      const from = this.startOf(i) + this.plan.settle;
      const end = this.startOf(i) + step.long - this.plan.guard;
      const to = this.live ? Math.min(end, judgedTo) : end;
      if (to <= from) continue;
      draw(g, 'rect', { x: this.x(from), y: this.out[0], width: this.x(to) - this.x(from), height: this.out[1] - this.out[0], class: 'win' });
    }
  }

  curves(g) {
    let out = '';
    let inp = '';
    let load = '';
    let gap = true;
    this.bins.forEach((bin, i) => {
      if (!bin) { gap = true; return; }
      const x = LEFT + 2 * i + 1;
      const line = (low, high, range, lane) =>
        low === null ? '' : `${gap ? 'M' : 'L'}${x} ${Picture.y(high, range, lane).toFixed(1)}L${x} ${Picture.y(low, range, lane).toFixed(1)}`;
      out += line(bin[0], bin[1], this.range, this.out);
      inp += line(bin[2], bin[3], this.inputRange, this.inp);
      load += line(bin[4], bin[5], [0, this.plan.rated * 1.1], this.load);
      gap = false;
    });
    draw(g, 'path', { d: out, class: 'out' });
    draw(g, 'path', { d: inp, class: 'inp' });
    draw(g, 'path', { d: load, class: 'loadl' });
  }

  // Before the start: what will be judged, dimensioned, and nothing measured.
  drawReady() {
    const judged = this.plan.steps.map((s, i) => [s, i]).filter(([s]) => s.judged);
    if (!judged.length) return;
    const [longest, index] = judged.reduce((a, b) => (b[0].long > a[0].long ? b : a));
    this.open(index, this.startOf(index), 0, 0.2);
    this.last = index;
    const g = this.lines;
    g.replaceChildren();
    this.windows(g, 0);
    const at = this.startOf(index);
    const from = at + this.plan.settle;
    const to = at + longest.long - this.plan.guard;
    this.floor(g, longest, from, to);
    if (longest.floor !== undefined) {
      const y = Picture.y(longest.floor, this.range, this.out);
      draw(g, 'text', { x: this.x(from) - 14, y: y + 5, class: 'fl', 'text-anchor': 'end' }, 'limit ' + longest.floor.toFixed(2) + ' V');
    }
    this.jaws(g, from, to, `judged ${this.plan.settle.toFixed(2)} to ${(longest.long - this.plan.guard).toFixed(2)} s`);
    const y = Picture.y(longest.input, this.inputRange, this.inp);
    draw(g, 'path', { d: `M${LEFT} ${y}H${RIGHT}`, class: 'inp' });
    const before = this.plan.steps[index - 1] ?? longest;
    const level = (v) => Picture.y(v, [0, this.plan.rated * 1.1], this.load);
    draw(g, 'path', { d: `M${LEFT} ${level(before.load)}H${this.x(at)}V${level(longest.load)}H${this.x(at + longest.long)}V${level(0)}`, class: 'loadl' });
    draw(g, 'text', { x: RIGHT + 10, y: this.load[1], class: 'zl' }, longest.load.toFixed(2) + ' A');
  }

  add(event) {
    this.live = true;
    this.kept.push(event);
    const oldest = event.i - KEPT_S * 1000 / this.plan.column;
    while (this.kept[0].i < oldest) this.kept.shift();
    this.fold(event);
  }

  fold(event) {
    const column = this.plan.column / 1000;
    const count = event.v.length / 6;
    for (let c = 0; c < count; c++) {
      const t = (event.i + c * event.k + event.k / 2) * column;
      this.now = Math.max(this.now, Math.min(event.i + event.n, event.i + (c + 1) * event.k) * column);
      const at = Math.floor((this.x(t) - LEFT) / 2);
      if (at < 0 || at >= this.bins.length) continue;
      const bin = this.bins[at] ?? (this.bins[at] = [null, null, null, null, null, null]);
      for (let lane = 0; lane < 6; lane++) {
        const value = event.v[c * 6 + lane];
        if (value === null) continue;
        const v = value / 1000;
        if (bin[lane] === null) bin[lane] = v;
        else bin[lane] = lane % 2 ? Math.max(bin[lane], v) : Math.min(bin[lane], v);
      }
    }
  }

  // Where the steps have begun. A step that no longer fits opens the next sheet.
  begin(starts) {
    const before = this.starts.length;
    this.starts = starts;
    if (starts.length === before) return;
    const index = this.step();
    const step = this.plan.steps[index];
    const at = starts[index];
    const fits = before > 0 && at + step.long <= this.to && step.hold === this.plan.steps[this.first].hold;
    if (fits) this.last = Math.max(this.last, index);
    else this.open(index, at);
  }

  drawLive() {
    if (this.now > this.to && this.step() >= 0) {
      const step = this.step();
      this.open(step, this.now);
      this.first = step;
    }
    const old = this.range.join();
    this.scale();
    if (old !== this.range.join() || !this.titled) this.drawGround();
    this.titled = this.live;
    const g = this.lines;
    g.replaceChildren();
    this.windows(g, this.now);
    this.curves(g);
    const index = this.step();
    for (let i = this.first; i <= Math.min(this.last, index); i++) {
      const s = this.plan.steps[i];
      if (s.judged) this.floor(g, s, this.startOf(i) + this.plan.settle, this.startOf(i) + s.long);
    }
    const step = this.plan.steps[index];
    if (step?.judged) {
      const from = this.starts[index] + this.plan.settle;
      const to = Math.min(this.now, this.starts[index] + step.long - this.plan.guard);
      if (step.floor !== undefined) {
        const y = Picture.y(step.floor, this.range, this.out);
        const beside = this.x(this.starts[index] + step.long) + 12;
        const fits = beside <= RIGHT - 110; // where it does not fit beside the floor, it stands above it
        draw(g, 'text', { x: fits ? beside : RIGHT - 110, y: fits ? y + 5 : y - 8, class: 'fl' }, 'limit ' + step.floor.toFixed(2) + ' V');
      }
      if (to > from) {
        if (this.inputVoid) {
          draw(g, 'rect', { x: this.x(from), y: this.out[0], width: this.x(to) - this.x(from), height: this.out[1] - this.out[0], class: 'veil' });
          draw(g, 'rect', { x: this.x(from), y: this.out[0], width: this.x(to) - this.x(from), height: this.out[1] - this.out[0], fill: 'url(#hv)' });
        }
        const words = this.inputVoid ? 'not judged' : `judged ${this.plan.settle.toFixed(2)} to ${(to - this.starts[index]).toFixed(1)} s`;
        this.jaws(g, from, to, words);
      }
    }
    const x = Math.min(RIGHT, this.x(this.now));
    draw(g, 'path', { d: `M${x} ${this.out[0]}V${this.load[1]}`, class: 'now' });
  }
}

// The plate fails lit: without a word from the station for a second nothing is known any more.
class LivePlate {
  constructor() {
    this.heard = performance.now();
    this.over = false;
    this.volts = '';
    setInterval(() => this.look(), 200);
  }

  show(plate) {
    const box = document.getElementById('bigplate');
    box.className = 'en ' + plate.form;
    box.dataset.state = plate.form;
    document.getElementById('stripes').className = 'zb ' + plate.form;
    put('word', plate.word);
    put('line', plate.line);
    put('volts', plate.volts);
    if (plate.form !== 'unknown') this.volts = plate.volts;
  }

  look() {
    const silent = performance.now() - this.heard;
    if (this.over || silent < STALE_MS) return;
    const last = this.volts ? ` Last ${this.volts} V,` : '';
    this.show({ form: 'unknown', word: 'NOT KNOWN', line: `Treat as energised. No link.${last} ${Math.round(silent / 1000)} s ago.`, volts: '?' });
  }
}

function beside(now, view) {
  put('guards', now.guards);
  put('watchers', now.watchers);
  if (now.stopping) put('goes', now.stopping);
  if (now.starts.length) {
    const index = now.starts.length - 1;
    put('step', view.plan.steps[index].title);
    [...document.querySelectorAll('#rail li')].forEach((li, i) => {
      li.className = i < index || now.over ? 'done' : i === index ? 'cur' : '';
    });
    put('asked', `asked for ${view.plan.steps[index].load.toFixed(2)} A`);
  }
  if (now.hand ?? now.asks) put('asks', now.hand ?? now.asks); // what a hand must do goes first
  document.getElementById('asks').classList.toggle('hand', now.hand !== undefined);
  if (now.mean) {
    put('mean', now.mean.v ?? '–');
    put('meanu', now.mean.u ? ' ' + now.mean.u : '');
    put('margin', now.mean.margin ?? '');
    put('against', now.mean.why ?? now.mean.limit ?? '');
  }
  if (now.input) {
    put('lowest', now.input.v ?? '–');
    put('lowestu', now.input.u ? ' ' + now.input.u : '');
    put('zone', now.input.zone ?? '');
    put('edge', now.input.why ?? `(${now.input.edge})`);
    view.inputVoid = now.input.zone === 'void';
  }
  if (now.left) put('left', now.left);
  document.getElementById('done').setAttribute('d', `M1 7H${1 + 340 * (now.share ?? 0)}`);
  room(now.room ?? []);
}

function room(trips) {
  const list = document.getElementById('room');
  if (list.children.length !== trips.length) {
    list.replaceChildren(...trips.map((trip) => {
      const li = document.createElement('li');
      const name = document.createElement('span');
      name.textContent = trip.n;
      const scale = document.createElementNS(SVG, 'svg');
      for (const [k, v] of Object.entries({ viewBox: '0 0 120 16', width: 120, height: 16, 'aria-hidden': 'true' })) scale.setAttribute(k, v);
      draw(scale, 'path', { d: 'M1 8H116', class: 'tr' });
      draw(scale, 'path', { class: 'tc' });
      draw(scale, 'path', { d: 'M117 0v16', class: 'te' });
      li.append(name, scale, document.createElement('b'));
      return li;
    }));
  }
  trips.forEach((trip, i) => {
    const li = list.children[i];
    li.querySelector('.tc').setAttribute('d', trip.s < 0 ? '' : `M${1 + 115 * trip.s} 1v14`);
    const left = li.querySelector('b');
    if (left.textContent !== trip.l) left.textContent = trip.l;
  });
}

function finish(now, source, plate) {
  source.close();
  plate.over = true;
  document.getElementById('over').hidden = false;
  document.querySelectorAll('.right > .key').forEach((key) => { key.hidden = true; }); // nothing runs: nothing to watch
  put('verdict', now.verdict ?? '');
  put('how', now.failure ?? now.end ?? '');
  put('why', now.why ?? '');
  put('remedy', now.remedy ?? '');
  document.querySelector('#over .form use').setAttribute('href', now.verdict ? '#form-' + now.verdict : '');
  put('step', 'The run is over');
  put('asks', now.hand ?? ''); // a load that a hand has set, a hand must switch off
  put('goes', 'the run is over');
  document.getElementById('stopform').hidden = true;
  document.getElementById('nostop').hidden = false;
}

if (main?.dataset.live) {
  const view = new Picture(picture);
  const plate = new LivePlate();
  const source = new EventSource(main.dataset.live);
  const slow = matchMedia('(prefers-reduced-motion: reduce)').matches;
  let drawn = 0;
  source.addEventListener('columns', (event) => {
    const columns = JSON.parse(event.data);
    plate.heard = performance.now();
    view.add(columns);
    const load = columns.v.at(-1);
    if (performance.now() - drawn < (slow ? 500 : 0)) return;
    if (load !== null && performance.now() - (plate.loadShown ?? 0) > 250) {
      plate.loadShown = performance.now();
      put('load', Math.max(0, load / 1000).toFixed(2));
    }
    drawn = performance.now();
    view.drawLive();
  });
  source.addEventListener('now', (event) => {
    const now = JSON.parse(event.data);
    plate.heard = performance.now();
    plate.show(now.plate);
    view.begin(now.starts);
    beside(now, view);
    if (now.over) finish(now, source, plate);
  });
} else if (main) {
  if (picture) new Picture(picture).drawReady();
  document.addEventListener('glance', (event) => {
    const glance = event.detail;
    if (glance.stoppable && glance.href === '/bench/' + main.dataset.bench) location.reload();
  });
  const prepare = document.getElementById('prepare');
  let soon = null; // a field that is left by ticking the next one is one change, not two
  prepare.addEventListener('change', () => { clearTimeout(soon); soon = setTimeout(() => prepare.requestSubmit(), 300); });
}

// Start is a press held for one second: the jaws close while it is held, letting go cancels.
const start = document.getElementById('start');
if (start) {
  let since = null;
  const left = document.getElementById('jawleft');
  const right = document.getElementById('jawright');
  const close = (share) => {
    left.setAttribute('transform', `translate(${share * 124} 0)`);
    right.setAttribute('transform', `translate(${share * -124} 0)`);
  };
  const cancel = () => { since = null; close(0); };
  const tick = () => {
    if (since === null) return;
    const share = Math.min(1, (performance.now() - since) / HOLD_MS);
    close(share);
    if (share < 1) { requestAnimationFrame(tick); return; }
    since = null;
    put('holdwords', 'Starting.');
    document.getElementById('startform').requestSubmit();
  };
  const begin = () => { if (since === null) { since = performance.now(); requestAnimationFrame(tick); } };
  start.addEventListener('pointerdown', (event) => { if (event.button === 0) { start.setPointerCapture(event.pointerId); begin(); } });
  for (const gone of ['pointerup', 'pointercancel', 'blur']) start.addEventListener(gone, cancel);
  start.addEventListener('keydown', (event) => { if (event.key === 'Enter') { event.preventDefault(); begin(); } });
  start.addEventListener('keyup', (event) => { if (event.key === 'Enter') cancel(); });
  start.addEventListener('contextmenu', (event) => event.preventDefault());
  start.focus();
}
