// Runs the engine off the page's own thread, so that typing and scrolling never wait for it.
//
// The first message names the files; every further one is a question for
// `handout_engine.pages.browser.answer`, which takes and gives JSON text.

const ENGINE = "/engine";

let ready;

async function start({ runtime, archive }) {
  const fetched = fetch(archive);
  const { loadPyodide } = await import(new URL("pyodide.mjs", runtime).href);
  const python = await loadPyodide({ indexURL: runtime });
  const response = await fetched;
  if (!response.ok) throw new Error(`${response.status} for ${archive}`);
  python.unpackArchive(await response.arrayBuffer(), "zip", { extractDir: ENGINE });
  python.runPython(`import sys; sys.path.insert(0, "${ENGINE}")`);
  return python.runPython("from handout_engine.pages.browser import answer; answer");
}

self.addEventListener("message", async ({ data }) => {
  if (data.runtime) {
    ready = start(data);
    ready.catch(() => {}); // told to whoever asks the first question
    return;
  }
  try {
    const answer = await ready;
    self.postMessage({ number: data.number, answer: answer(data.question) });
  } catch (error) {
    self.postMessage({ number: data.number, failure: String(error) });
  }
});
