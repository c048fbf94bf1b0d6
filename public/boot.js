// Starts the program, and has the service worker keep a copy of it for use without a network.
//
// For the program: window.plugwaryShell = { offlineReady, updateWaiting } is the state so far;
// 'plugwary-offline-ready' (once on each page, as soon as no network is needed) and 'plugwary-update-waiting' are sent to
// window; window.plugwaryApplyUpdate() changes over to the waiting update and loads the page anew.

const shell = { offlineReady: false, updateWaiting: false };
window.plugwaryShell = shell;

async function start() {
  const { js, wasm } = document.querySelector('script[data-wasm]').dataset;
  const { default: init } = await import(js);
  await init({ module_or_path: wasm });
  document.getElementById('first-paint')?.remove();
}

let hasFailed = false;

function giveUp(trouble) {
  console.error(trouble);
  hasFailed = true;
  const line = document.getElementById('first-paint-line');
  if (line) line.textContent = 'Plugwary could not start. Load this page again; if that does not help, use a newer browser.';
}

// A page that comes back out of the browser's memory may have been overtaken by another one of the app.
window.addEventListener('pageshow', ({ persisted }) => {
  if (persisted) location.reload();
});

let registration;
let isAskedFor = false;

window.plugwaryApplyUpdate = () => {
  if (registration?.waiting) {
    isAskedFor = true;
    registration.waiting.postMessage('skip-waiting');
  } else {
    // Another tab has already changed over.
    location.reload();
  }
};

function tell(what) {
  window.dispatchEvent(new CustomEvent(what));
}

function updateWaiting() {
  // A program that does not start can ask nobody, and there is nothing it could disturb.
  if (hasFailed) return window.plugwaryApplyUpdate();
  shell.updateWaiting = true;
  tell('plugwary-update-waiting');
}

function offlineReady() {
  shell.offlineReady = true;
  tell('plugwary-offline-ready');
}

let followed;

function follow(worker) {
  if (worker === followed) return;
  followed = worker;
  // Without an older worker this is the first visit.
  const isFirst = !registration.active;
  worker.addEventListener('statechange', () => {
    if (worker.state === 'installed' && !isFirst) updateWaiting();
    if (worker.state === 'activated' && isFirst) offlineReady();
  });
}

async function keep() {
  registration = await navigator.serviceWorker.register('/sw.js', { updateViaCache: 'none' });
  if (registration.active) offlineReady();
  if (registration.active && registration.waiting) updateWaiting();
  if (registration.installing) follow(registration.installing);
  registration.addEventListener('updatefound', () => follow(registration.installing));
  // An installed app may stay open for days without loading its page.
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') registration.update().catch(() => {});
  });
}

const build = document.querySelector('meta[name="plugwary-build"]').content;
if ('serviceWorker' in navigator && build !== 'development') {
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    // It also changes when the first worker takes over, and when another tab asked: neither may disturb this page.
    if (isAskedFor) location.reload();
  });
  // Keeping a copy comes after starting, so that the two do not share a slow network.
  start().catch(giveUp).then(keep).catch((trouble) => console.error(trouble));
} else {
  start().catch(giveUp);
}
