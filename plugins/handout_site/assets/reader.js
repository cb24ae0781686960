// The reader's own size: takes her changes from the form, asks the engine, shows the answer.
//
// The address always holds the choices that the page shows, so that it can be shared, reloaded
// and gone back from. Nothing else is stored, and nothing is sent.

import { readAddress, writeAddress } from "./address.js";
import { Engine } from "./engine.js";
import { keepForOffline } from "./keep.js";
import { nameFor } from "./naming.js";
import { showForm, showProblems, showSheet } from "./sheet.js";
import { linkSheets } from "./true_scale.js";

const SETTINGS = ["units", "finest", "paper"];
const form = document.getElementById("handout-form");
const status = form.querySelector(".form-status");
const data = document.getElementById("handout-page");
const page = JSON.parse(data.textContent);
const root = new URL(data.dataset.root, location.href);
const at = (address) => new URL(address, root).href;
const engine = new Engine({
  worker: new URL("worker.js", import.meta.url).href,
  runtime: at(data.dataset.runtime),
  archive: at(data.dataset.archive),
});

let shown = ""; // the choices that the page shows, as they stand in an address
let asked = ""; // the choices of the last question
let latest = 0; // the number of the last question: an answer to an older one is not shown
let working = Promise.resolve(); // settled once the last question is answered
let kept = false;

const controls = () => [...form.elements].filter(({ name }) => name);
const held = () => new Map(controls().map(({ name, value }) => [name, value]));
const changed = () =>
  new Map(
    controls()
      .filter(({ value, dataset }) => value !== dataset.usual)
      .map(({ name, value }) => [name, value]),
  );

// The engine's question for these choices; an input's name is its block's and its own.
function question(choices) {
  const put = { page, choices: {}, tape: {} };
  for (const [name, value] of choices) {
    const [block, input] = name.split(".");
    if (name === "paper") put.paper = value;
    else if (SETTINGS.includes(name)) put.tape[name === "units" ? "first" : name] = value;
    else put.choices[block] = { ...put.choices[block], [input]: value };
  }
  return put;
}

// Works the page out with these choices and shows it. `remember` is told the address of what is
// shown; it is not called when something has to be mended first, or when she has gone on.
async function workOut(choices, remember) {
  const sent = held();
  const number = ++latest;
  asked = writeAddress(choices);
  say("working", "Working it out …");
  let answer;
  try {
    answer = await engine.ask(question(choices));
  } catch {
    if (number === latest) giveUp();
    return;
  }
  if (number !== latest) return;
  if (answer.problems.length) {
    showProblems(form, answer.form, unchangedSince(sent, choices));
    say("mend", "Something has to be mended first; until then the page shows the measures before.");
    return;
  }
  const answered = writeAddress(showForm(form, answer.form, sent));
  showSheet(answer);
  if (answer.made_to) {
    nameFor(answer.made_to);
    takeAlong(answer.taken_along);
  }
  const put = question(choices);
  linkSheets(
    async (sheet) => (await engine.ask({ ...put, sheet })).sheet,
    (put.paper ?? page.paper) === page.paper,
  );
  setPaper();
  say("shown", "The page shows these measures now.");
  if (answered !== shown) remember(answered);
  shown = asked = answered;
  if (!kept) keepForOffline(at("offline.js"));
  kept = true;
}

// The pages of other sizes are opened with all that she has chosen but the baby.
function takeAlong(choices) {
  const address = writeAddress(new Map(Object.entries(choices)));
  if (!address) return;
  for (const link of document.querySelectorAll(".size-choice a")) link.search = address;
}

// Of the choices asked about, those whose control she has not changed since.
function unchangedSince(sent, choices) {
  const now = held();
  return [...choices].filter(([name]) => now.get(name) === sent.get(name));
}

function giveUp() {
  asked = null;
  say("failed", "This could not be worked out here; the page shows what it did before.");
}

function say(state, words) {
  form.dataset.state = state;
  status.textContent = words;
}

function setPaper() {
  document.documentElement.dataset.paper = form.elements.namedItem("paper").value;
}

// Her changes in the form become a new entry of the history.
function take() {
  const choices = changed();
  if (writeAddress(choices) !== asked) {
    working = workOut(choices, (address) =>
      history.pushState(null, "", location.pathname + address + location.hash),
    );
  }
  return working;
}

// The address she has opened, or gone back to, is followed as it is.
function follow() {
  const known = new Set(controls().map(({ name }) => name));
  const choices = readAddress(location.search, known);
  if (writeAddress(choices) !== asked) working = workOut(choices, () => {});
}

// To the first field that has to be mended, with its error in sight.
function leadTo(control) {
  control?.focus();
  control?.closest(".form-field").scrollIntoView({ block: "nearest" });
}

function putBack() {
  for (const control of controls()) control.value = control.dataset.usual;
}

form.addEventListener("input", () => engine.start());
form.addEventListener("change", take);
form.addEventListener("submit", async (event) => {
  event.preventDefault();
  if (writeAddress(changed()) === shown) say("shown", "The page shows these measures.");
  await take();
  leadTo(form.querySelector('[aria-invalid="true"]'));
});
form.addEventListener("reset", (event) => {
  event.preventDefault();
  putBack();
  take();
});
window.addEventListener("popstate", follow);

form.querySelector(".form-body").disabled = false;
say("ready", "");
setPaper();
follow();
