// Runs the press, the program that makes files, apart from the page: a big file must not stop the screen.
//
// It gets one order, the name of a function of the press and what that takes, and answers with the bytes of the file, or with a word
// that says what went wrong. Then the page ends it, and the memory is free again.

onmessage = async ({ data: [make, ...order] }) => {
  let fault = 'not-loaded';
  try {
    importScripts('/press.js');
    await wasm_bindgen({ module_or_path: '/press_bg.wasm' });
    fault = 'stopped';
    const file = wasm_bindgen[make](...order);
    postMessage(file, [file.buffer]);
  } catch (trouble) {
    console.error(trouble);
    postMessage(fault);
  }
};
