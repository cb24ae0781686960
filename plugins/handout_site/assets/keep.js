// Asks the browser to keep what this page needs, so that it works without network from now on.
//
// Called once the engine is in use: a reader who only reads fetches nothing for it.

export async function keepForOffline(script) {
  if (!("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register(script);
    const { active } = await navigator.serviceWorker.ready;
    const used = performance.getEntriesByType("resource").map(({ name }) => name);
    active.postMessage({ keep: [location.href, ...used] });
  } catch (error) {
    console.info("This page will need a network:", error);
  }
}
