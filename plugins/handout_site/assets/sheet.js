// Puts an answer of the engine into the page.
//
// The engine's HTML is made by a serialiser that escapes every text. It is parsed without being
// run all the same, and what could run is refused.

function parsed(html) {
  const found = new DOMParser().parseFromString(html, "text/html").body.firstElementChild;
  const every = [found, ...found.querySelectorAll("*")];
  const alive = every.some(
    (each) =>
      each.localName === "script" || [...each.attributes].some(({ name }) => name.startsWith("on")),
  );
  if (alive) throw new Error("the answer holds something that runs");
  return found;
}

const shown = new Map(); // what each place of the page holds, as the engine has written it

// Shows all fragments and inline values; parts that the reader has unfolded stay unfolded.
export function showSheet({ fragments, values, chosen, sizes }) {
  fragments.forEach((html, number) => {
    if (shown.get(number) === html) return;
    for (const place of document.querySelectorAll(`[data-place="${number}"]`)) {
      replace(place, parsed(html));
    }
    shown.set(number, html);
  });
  for (const place of document.querySelectorAll("[data-value]")) {
    const html = values[place.dataset.value];
    if (html) replace(place, parsed(html));
  }
  document.querySelector(".handout-chosen").replaceWith(parsed(chosen));
  if (sizes) document.querySelector(".size-choice").replaceWith(parsed(sizes));
}

function replace(place, fresh) {
  if (place.outerHTML === fresh.outerHTML) return;
  const folds = fresh.querySelectorAll("details");
  place.querySelectorAll("details").forEach((fold, number) => {
    if (folds[number]) folds[number].open = fold.open;
  });
  place.replaceWith(fresh);
}

// Brings the form in line with the engine's: what controls hold, what is in use while they are
// empty, how they were read, their hints, and their errors.
// `sent` says what each control held when the question was asked: a control that the reader has
// changed since keeps what she has written. Returns the choices that were answered.
export function showForm(form, html, sent) {
  const fresh = parsed(html);
  const choices = new Map();
  for (const control of fresh.querySelectorAll("[name]")) {
    const own = form.elements.namedItem(control.name);
    own.dataset.usual = control.dataset.usual;
    if ("placeholder" in control) own.placeholder = control.placeholder;
    if (own.value === sent.get(own.name) && own.value !== control.value) own.value = control.value;
    if (control.value !== control.dataset.usual) choices.set(control.name, control.value);
  }
  showWords(fresh.querySelectorAll(".form-hint, .form-read"));
  showErrors(form, fresh);
  return choices;
}

// Shows what has to be mended, and what the reader has written (it may have come by an address),
// as the engine has read it. All else stays as it was: where a block has failed, the engine does not know what others held.
export function showProblems(form, html, written) {
  const fresh = parsed(html);
  for (const [name, value] of written) {
    const own = form.elements.namedItem(name);
    const read = fresh.querySelector(`input[name="${name}"]`);
    own.value = read ? read.value : value;
    // What no list offers cannot be shown in it.
    if (own.selectedIndex === -1) own.value = own.dataset.usual;
  }
  showWords(fresh.querySelectorAll(".form-read"));
  showErrors(form, fresh);
}

function showErrors(form, fresh) {
  for (const control of fresh.querySelectorAll("[name]")) {
    const own = form.elements.namedItem(control.name);
    own.setAttribute("aria-invalid", control.getAttribute("aria-invalid"));
  }
  const errors = fresh.querySelectorAll(".form-error");
  showWords(errors);
  for (const error of errors) if (error.textContent) unfold(document.getElementById(error.id));
}

function showWords(fresh) {
  for (const words of fresh) {
    const own = document.getElementById(words.id);
    if (own.textContent !== words.textContent) own.textContent = words.textContent;
  }
}

function unfold(place) {
  for (let fold = place.closest("details"); fold; fold = fold.parentElement.closest("details")) {
    fold.open = true;
  }
}
