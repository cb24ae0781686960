// The name of a page that is made to a size or to a measured baby, wherever it stands beside the
// text: in the title block, in the note that names a seat, in the window's title (by which a printed
// file is called), and at the foot of every printed sheet.

const block = document.querySelector(".print-size");
const note = document.querySelector(".of-seat .made-to");
const built = { title: document.title, words: block?.textContent };
const foot = document.createElement("style");
document.head.append(foot);

// `words` say what the page is made to now: `Size 74, her own measures`.
export function nameFor(words) {
  if (!block) return;
  block.textContent = words;
  const asBuilt = words === built.words;
  const within = `${words[0].toLowerCase()}${words.slice(1)}`;
  if (note) note.textContent = within;
  const name = `${block.dataset.handout}, ${within}`;
  document.title = asBuilt ? built.title : `${name} - ${block.dataset.site}`;
  foot.textContent = asBuilt ? "" : `@page { @bottom-left { content: ${quoted(name)}; } }`;
}

// A text as CSS quotes it.
function quoted(text) {
  return `"${text.replace(/["\\<\n]/g, (sign) => `\\${sign.codePointAt(0).toString(16)} `)}"`;
}
