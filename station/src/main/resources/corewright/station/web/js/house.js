// What every page does: forms answered without losing what was typed, drafts, scans, STOP. No library.
'use strict';
const proof = document.querySelector('meta[name=proof]')?.content ?? '';

function say(what, remedy) {
  const box = document.getElementById('message');
  box.replaceChildren();
  const strong = document.createElement('b');
  strong.textContent = what;
  box.append(strong, document.createTextNode(remedy));
  box.hidden = false;
  box.focus();
}

// A refused form stays as it was typed: the answer is shown above it.
async function send(form, submitter) {
  const body = new FormData(form, submitter);
  const multipart = form.enctype === 'multipart/form-data';
  try {
    const answer = await fetch(submitter?.getAttribute('formaction') ?? form.action, {
      method: 'POST',
      body: multipart ? body : new URLSearchParams(body),
      headers: { 'X-Form': 'yes', 'X-Proof': proof || (body.get('proof') ?? '') },
    });
    if (answer.headers.get('X-Refused') === 'yes') {
      const told = await answer.json();
      say(told.what, told.remedy);
      if (form.dataset.draft) keep(form);
      return;
    }
    const to = answer.headers.get('X-Go');
    if (to) location.assign(to);
    else if (!answer.ok) location.assign(answer.url);
  } catch (lost) {
    say('The station does not answer.', 'Nothing typed here is lost. Look whether it still runs, then try again.');
  }
}

document.addEventListener('submit', (event) => {
  const form = event.target;
  if (form.method !== 'post' || form.dataset.plain !== undefined) return;
  event.preventDefault();
  if (form.dataset.busy) return;
  clearTimeout(waiting.get(form)); // a draft must not outlive the form that was sent
  waiting.delete(form);
  form.dataset.busy = 'yes';
  send(form, event.submitter).finally(() => delete form.dataset.busy);
});

// Drafts: what is typed into a form with data-draft is kept by the station and put back after a crash.
const waiting = new Map();
function keep(form) {
  clearTimeout(waiting.get(form));
  waiting.delete(form);
  const body = new URLSearchParams();
  for (const [name, value] of new FormData(form)) {
    if (typeof value === 'string' && name !== 'proof' && name !== 'password') body.append(name, value);
  }
  body.append('proof', proof);
  fetch('/draft/' + encodeURIComponent(form.dataset.draft), { method: 'POST', body, keepalive: true }).catch(() => {});
}
document.addEventListener('input', (event) => {
  const form = event.target.closest?.('form[data-draft]');
  if (!form) return;
  clearTimeout(waiting.get(form));
  waiting.set(form, setTimeout(keep, 400, form));
});
addEventListener('pagehide', () => [...waiting.keys()].forEach(keep));

// A scanner types faster than any hand and ends with Enter: wherever the cursor stands, the scan goes to the station.
const QUICK_MS = 40;
let typed = '';
let last = 0;
let before = null;
document.addEventListener('keydown', (event) => {
  const now = event.timeStamp;
  const field = event.target.matches?.('input, textarea') ? event.target : null;
  if (field?.type === 'password') { typed = ''; return; } // however fast: a password is no scan, and goes into no address
  if (event.key === 'Enter' && typed.length >= 4 && now - last < 3 * QUICK_MS) {
    if (field?.dataset.scan === 'here') { typed = ''; return; }
    event.preventDefault();
    event.stopPropagation();
    if (field && before !== null) field.value = before;
    const code = typed;
    typed = '';
    location.assign('/scan?code=' + encodeURIComponent(code) + '&from=' + encodeURIComponent(location.pathname + location.search));
    return;
  }
  if (event.key.length !== 1 || event.ctrlKey || event.metaKey || event.altKey) return;
  if (now - last > QUICK_MS) {
    typed = '';
    before = field ? field.value : null;
  }
  typed += event.key;
  last = now;
}, true);

// STOP: Esc anywhere, Space outside text fields and controls. No question is asked.
document.addEventListener('keydown', (event) => {
  const form = document.getElementById('stopform');
  if (!form || form.hidden) return;
  const typing = event.target.matches?.('input, textarea, select, button, a, summary');
  const scanning = typed.length > 1 && event.timeStamp - last < QUICK_MS; // a blank within a scan is no wish to stop
  if (event.key === 'Escape' || (event.key === ' ' && !typing && !scanning)) {
    event.preventDefault();
    fetch(form.action, { method: 'POST', body: new URLSearchParams({ proof }), headers: { 'X-Form': 'yes' } });
  }
}, true);

// The bench on every page: asked once a second. A lost link shows NOT KNOWN, never the last calm state.
const EVERY_MS = 1000;
const PATIENCE_MS = 2500;
document.documentElement.classList.add('js');

function showGlance(glance) {
  const stopform = document.getElementById('stopform');
  if (stopform) {
    stopform.action = glance.href + '/stop';
    stopform.hidden = !glance.stoppable;
    document.getElementById('nostop').hidden = glance.stoppable;
    const what = document.getElementById('stopwhat');
    if (what) what.textContent = glance.name;
  }
  const plate = document.getElementById('plate');
  if (plate) {
    plate.className = 'bstate ' + glance.form;
    plate.dataset.state = glance.form;
    plate.href = glance.href;
    const said = plate.querySelector('span');
    const volts = said.querySelector('b');
    if (said.firstChild.textContent !== glance.words) said.firstChild.textContent = glance.words;
    if (volts.textContent !== glance.volts) volts.textContent = glance.volts;
    plate.querySelector('.warn').toggleAttribute('hidden', glance.form === 'off');
  }
  document.dispatchEvent(new CustomEvent('glance', { detail: glance }));
}

if (document.getElementById('stopform')) {
  let lost = null;
  const unknown = () => {
    const plate = document.getElementById('plate');
    const href = plate?.getAttribute('href') ?? '/bench';
    const busy = !document.getElementById('stopform').hidden;
    showGlance({ form: 'unknown', words: 'NOT KNOWN, no link', volts: '?', href, name: '', stoppable: busy });
  };
  const ask = async () => {
    try {
      const answer = await fetch('/bench/glance', { headers: { 'X-Form': 'yes' } });
      if (!answer.ok) throw new Error(answer.status);
      const glance = await answer.json();
      clearTimeout(lost);
      lost = setTimeout(unknown, PATIENCE_MS);
      showGlance(glance);
    } catch (gone) {
      unknown();
    }
    setTimeout(ask, EVERY_MS);
  };
  lost = setTimeout(unknown, PATIENCE_MS);
  setTimeout(ask, EVERY_MS);
}

// On a phone the places are a strip: the one that is open is seen.
document.querySelector('.places [aria-current]')?.scrollIntoView({ inline: 'center', block: 'nearest' });

// So is the present moment on the day's scale.
const day = document.querySelector('.dayw');
const present = day?.querySelector('.nowj')?.getBoundingClientRect();
if (present) day.scrollLeft += present.left - day.clientWidth / 2;
