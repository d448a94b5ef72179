// A file dropped anywhere on a page, or chosen with a button: sent as it is, never opened here.
'use strict';
const MOST_BYTES = 200e6;

async function bring(file) {
  const told = document.getElementById('scanned');
  if (file.size > MOST_BYTES) {
    say('The file is larger than 200 MB.', 'Cut it to the stretch that matters, or pack it (.gz).');
    return;
  }
  if (told) told.textContent = 'Reading ' + file.name + ' …';
  try {
    const answer = await fetch('/dropped', {
      method: 'POST',
      body: file,
      headers: {
        'X-Form': 'yes',
        'X-Proof': proof,
        'X-Name': encodeURIComponent(file.name),
        'Content-Type': 'application/octet-stream',
      },
    });
    const to = answer.headers.get('X-Go');
    if (to) {
      location.assign(to);
      return;
    }
    const refused = await answer.json();
    say(refused.what, refused.remedy);
  } catch (lost) {
    say('The file did not come over.', 'Look whether the station still runs, then drop it once more.');
  }
  if (told) told.textContent = '';
}

const carriesFile = (event) => [...(event.dataTransfer?.types ?? [])].includes('Files')
  && !event.target.matches?.('input[type=file]');
document.addEventListener('dragover', (event) => {
  if (!carriesFile(event)) return;
  event.preventDefault();
  document.body.dataset.dropping = 'yes';
});
document.addEventListener('dragleave', (event) => {
  if (!event.relatedTarget) delete document.body.dataset.dropping;
});
document.addEventListener('drop', (event) => {
  delete document.body.dataset.dropping;
  if (!carriesFile(event) || !event.dataTransfer.files.length) return;
  event.preventDefault();
  bring(event.dataTransfer.files[0]);
});
document.addEventListener('change', (event) => {
  const input = event.target;
  if (input.matches?.('input[type=file][data-bring]') && input.files.length) bring(input.files[0]);
});
