// True-scale sheets of the reader's own measures, drawn when she asks for one.
//
// The site holds the sheets of its own measures only, on its own paper. Once the page shows an
// answer of the engine, a link leads to the site's PDF where that is of the same measures and
// paper; else the engine draws the sheet on her paper, and it opens as pages to print.

const printed = new Map(); // the site's PDFs, by the address of the sheet that each stands for
for (const link of document.querySelectorAll("a.sheet-link[data-sheet]")) {
  printed.set(link.dataset.sheet, link.getAttribute("href"));
}
let draw = null; // asks the engine for the sheet with an address; null before the first answer
let opened = ""; // the address of the sheet that was drawn last

// Called with each answer. `ask` resolves to a sheet as HTML; `sitePaper` says whether her paper is
// the site's own.
export function linkSheets(ask, sitePaper) {
  draw = ask;
  for (const link of document.querySelectorAll("a.sheet-link")) {
    const address = (link.dataset.sheet ??= link.getAttribute("href"));
    link.href = (sitePaper && printed.get(address)) || address;
  }
}

document.addEventListener("click", (event) => {
  const link = event.target.closest("a.sheet-link");
  if (!draw || !link || link.getAttribute("href") !== link.dataset.sheet) return;
  event.preventDefault();
  open(link.dataset.sheet);
});

// The window is opened at once, since a browser allows that only as the answer to a click.
async function open(address) {
  const view = window.open("", "_blank");
  try {
    const sheet = await draw(address);
    URL.revokeObjectURL(opened);
    opened = URL.createObjectURL(new Blob([sheet], { type: "text/html" }));
    (view ?? window).location.replace(opened);
  } catch (error) {
    view?.close();
    console.error(error);
  }
}
