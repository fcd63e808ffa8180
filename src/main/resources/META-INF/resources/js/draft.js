// Unsaved work outlives the browser: the last state of a form waits beside it, on this computer only.
const form = document.querySelector('form[data-draft]');
const notice = document.getElementById('draft');

if (form && notice) {
  const key = `staywright.draft.${location.pathname}`;
  const recall = () => {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  };
  const keep = (text) => {
    try {
      if (text === null) {
        localStorage.removeItem(key);
      } else {
        localStorage.setItem(key, text);
      }
    } catch {
      // Storage is full or forbidden: then the address alone holds the job.
    }
  };

  const draft = recall();
  if (draft && !location.search) {
    notice.querySelector('a').href = `${location.pathname}?${draft}`;
    notice.hidden = false;
  }
  notice.querySelector('button').addEventListener('click', () => {
    keep(null);
    notice.hidden = true;
  });

  const changed = () => keep(new URLSearchParams(new FormData(form)).toString());
  form.addEventListener('input', changed);
  form.addEventListener('moved', changed);
  form.addEventListener('restored', changed);
  form.addEventListener('submit', (event) => {
    if (event.submitter?.formMethod === 'post') {
      keep(null);
    }
  });
}
