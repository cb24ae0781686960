// The engine as the page sees it: a question goes in, an answer comes out, some time later.
//
// The worker and everything it needs are fetched at the first question, never before.

export class Engine {
  #files;
  #worker = null;
  #waiting = new Map();
  #asked = 0;

  // `files` has the addresses `worker`, `runtime` (a folder) and `archive`.
  constructor(files) {
    this.#files = files;
  }

  start() {
    if (this.#worker) return;
    this.#worker = new Worker(this.#files.worker, { type: "module" });
    this.#worker.addEventListener("message", ({ data }) => this.#told(data));
    this.#worker.addEventListener("error", () => this.#failed());
    this.#worker.postMessage({ runtime: this.#files.runtime, archive: this.#files.archive });
  }

  // Resolves to the answer. Rejects when the engine cannot be had or breaks; the next question
  // then starts it anew.
  async ask(question) {
    return JSON.parse(await this.askText(JSON.stringify(question)));
  }

  askText(question) {
    this.start();
    this.#asked += 1;
    const number = this.#asked;
    return new Promise((resolve, reject) => {
      this.#waiting.set(number, { resolve, reject });
      this.#worker.postMessage({ number, question });
    });
  }

  #told({ number, answer, failure }) {
    if (failure !== undefined) {
      console.error(failure);
      this.#failed();
      return;
    }
    this.#waiting.get(number).resolve(answer);
    this.#waiting.delete(number);
  }

  #failed() {
    this.#worker?.terminate();
    this.#worker = null;
    for (const { reject } of this.#waiting.values()) reject(new Error("the engine stopped"));
    this.#waiting.clear();
  }
}
