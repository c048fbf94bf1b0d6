// Runs the press, the program that makes and checks files, apart from the page: a big file must not stop the screen.
//
// It gets one order, the name of a function of the press and what that takes, and answers with the bytes of the file, or with a word
// that says what went wrong. Then the page ends it, and the memory is free again. What is made is sealed with the key of this device;
// where the browser lends no storage for a key it is made without.

onmessage = async ({ data: [make, ...order] }) => {
  let fault = 'not-loaded';
  try {
    importScripts('/press.js');
    await wasm_bindgen({ module_or_path: '/press_bg.wasm' });
    fault = 'stopped';
    const key = WITH_KEY[make] && (await deviceKey().catch((trouble) => console.error(trouble)));
    const file = await (key ? WITH_KEY[make](key, ...order) : wasm_bindgen[make](...order));
    postMessage(file, [file.buffer]);
  } catch (trouble) {
    console.error(trouble);
    postMessage(fault);
  }
};

const WITH_KEY = {
  page: sealedPage,
  pdf: (key, record, photos) => wasm_bindgen.pdf_sealed_by(record, photos, key.public),
  label: (key, record) => wasm_bindgen.label_sealed_by(record, key.public),
  device: (key) => wasm_bindgen.fingerprint(key.public),
};

async function sealedPage(key, record, photos) {
  const page = wasm_bindgen.page_sealed_by(record, photos, key.public);
  const now = new Date().toISOString().replace(/\.\d+/, '');
  const statement = wasm_bindgen.statement(page, key.public, now);
  return wasm_bindgen.attach(page, statement, await sign(key, statement));
}

async function sign(key, statement) {
  if (key.secret) return wasm_bindgen.sign(key.secret, statement);
  return new Uint8Array(await crypto.subtle.sign('Ed25519', key.signing, statement));
}

// The key of this device: made once, and kept in a database of its own.
async function deviceKey() {
  const opening = indexedDB.open('plugwary-key', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore('keys');
  const database = await answer(opening);
  try {
    const kept = await answer(database.transaction('keys').objectStore('keys').get('device'));
    if (kept) return kept;
    const fresh = await freshKey();
    // Another window may have been quicker meanwhile: the first key stays.
    const writing = database.transaction('keys', 'readwrite', { durability: 'strict' });
    const keys = writing.objectStore('keys');
    const first = await answer(keys.get('device'));
    if (first) return first;
    keys.put(fresh, 'device');
    await new Promise((done, failed) => {
      writing.oncomplete = done;
      writing.onabort = () => failed(writing.error);
    });
    return fresh;
  } finally {
    database.close();
  }
}

// Where the browser knows Ed25519, the secret never leaves it: no script can read it out. Elsewhere the press signs with 32 random bytes.
async function freshKey() {
  try {
    const { publicKey, privateKey } = await crypto.subtle.generateKey('Ed25519', false, ['sign', 'verify']);
    return { public: new Uint8Array(await crypto.subtle.exportKey('raw', publicKey)), signing: privateKey };
  } catch {
    const secret = crypto.getRandomValues(new Uint8Array(32));
    return { public: wasm_bindgen.public_key(secret), secret };
  }
}

function answer(request) {
  return new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });
}
