// Where a finger hits the first element that fits, or else what keeps it from doing so.
const [css, words] = arguments;
const fits = (element) => words === null || element.innerText.trim() === words;
const element = Array.from(document.querySelectorAll(css)).find(fits);
if (!element) return 'is not there';
element.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' });
const box = Array.from(element.getClientRects()).find((box) => box.width > 0 && box.height > 0);
if (!box) return 'cannot be seen';
const [x, y] = [box.x + box.width / 2, box.y + box.height / 2].map(Math.round);
const top = document.elementFromPoint(x, y);
if (!top) return 'is outside the screen';
if (!element.contains(top) && !top.contains(element)) return `lies under ${top.outerHTML.slice(0, 200)}`;
return { x, y };
