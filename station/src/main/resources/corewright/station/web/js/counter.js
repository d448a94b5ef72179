// The counter: what is known of a serial is said while it is typed; photographs chosen are shown; the minute runs.
'use strict';
const serial = document.getElementById('serial');
const known = document.getElementById('known');
let asked = serial?.value ?? '';
let asking;

async function ask() {
  if (serial.readOnly || serial.value === asked) return;
  asked = serial.value;
  try {
    const answer = await fetch('/counter/known?serial=' + encodeURIComponent(asked));
    if (answer.ok) known.innerHTML = await answer.text(); // our own page's part, escaped by the station
  } catch (lost) {
    known.replaceChildren(); // the station says so itself when the form is sent
  }
}

serial?.addEventListener('input', () => {
  clearTimeout(asking);
  asking = setTimeout(ask, 250);
});
serial?.addEventListener('change', ask);
serial?.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter') return;
  event.preventDefault(); // a scanner ends with Enter: the label comes next
  ask();
  document.getElementById('label').focus();
});

for (const input of document.querySelectorAll('.ph input')) {
  input.addEventListener('change', () => {
    const place = input.closest('.ph');
    const first = input.files[0];
    place.classList.toggle('ok', Boolean(first));
    place.querySelector('em').hidden = !first;
    place.querySelector('img')?.remove();
    if (!first) return;
    const picture = document.createElement('img');
    picture.alt = '';
    picture.src = URL.createObjectURL(first);
    place.prepend(picture);
  });
}

// The minute: from the first key to the tag. It judges nobody; it shows where time goes.
const minute = document.getElementById('minute');
const form = document.getElementById('receive');
if (minute && form) {
  const ticks = document.getElementById('ticks');
  for (let s = 0; s <= 60; s++) {
    const line = document.createElementNS('http://www.w3.org/2000/svg', 'path');
    line.setAttribute('d', `M${4 + s * 9.87} ${s % 15 === 0 ? 10 : s % 5 === 0 ? 18 : 24}V34`);
    line.setAttribute('class', 'mn');
    ticks.append(line);
  }
  form.addEventListener('input', () => {
    const begun = performance.now();
    minute.hidden = false;
    setInterval(() => {
      const s = Math.floor((performance.now() - begun) / 1000);
      minute.querySelector('b').textContent = `${Math.floor(s / 60)}:${String(s % 60).padStart(2, '0')}`;
      document.getElementById('past').setAttribute('d', `M0 33H${Math.min(600, 4 + s * 9.87)}`);
      [...ticks.children].forEach((line, i) => line.setAttribute('class', i <= s ? 'mp' : 'mn'));
    }, 1000);
  }, { once: true });
}
