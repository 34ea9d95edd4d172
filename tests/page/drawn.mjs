// What the program drew and what the accessibility tree holds, side by side.

/** Roles of the program's nodes as the browser's tree calls them; the others keep their names. */
const tree_roles = { row: 'button', toggle: 'checkbox', text: 'textbox', number: 'textbox', choice: 'combobox' };

/** The program's own list: [{ id, role, name, rect: [x, y, w, h], enabled }], and the words it cut. */
export const drawn = (page) => page.evaluate(() => window.treadle_drawn());

/** id of a node -> { role, name, box }: as assistive software gets them, cut to what is in sight. */
export async function tree(page, door) {
  const { nodes } = await door.send('Accessibility.getFullAXTree');
  const { root } = await door.send('DOM.getDocument', { depth: -1 });
  const ids = new Map();
  const visit = (node) => {
    const at = node.attributes?.indexOf('data-id') ?? -1;
    if (at >= 0 && at % 2 === 0) ids.set(node.backendNodeId, node.attributes[at + 1]);
    node.children?.forEach(visit);
  };
  visit(root);
  const boxes = await page.evaluate(() => Object.fromEntries(
    [...document.querySelectorAll('#mirror [data-id]')].map((element) => {
      const all = element.getBoundingClientRect();
      let [left, top, right, bottom] = [all.left, all.top, all.right, all.bottom];
      for (let area = element.parentElement; area; area = area.parentElement?.closest('.m-scroll, #mirror')) {
        const clip = area.getBoundingClientRect();
        if (!area.matches('.m-scroll, #mirror')) continue;
        [left, top] = [Math.max(left, clip.left), Math.max(top, clip.top)];
        [right, bottom] = [Math.min(right, clip.right), Math.min(bottom, clip.bottom)];
      }
      return [element.dataset.id, {
        seen: [left, top, right - left, bottom - top],
        whole: [all.left, all.top, all.width, all.height],
      }];
    })));
  const found = new Map();
  for (const node of nodes) {
    const id = ids.get(node.backendDOMNodeId);
    if (id === undefined || node.ignored) continue;
    found.set(id, { role: node.role?.value, name: node.name?.value ?? '', ...boxes[id] });
  }
  return found;
}

const k_px = 2;
const near = (a, b) => a.every((value, i) => Math.abs(value - b[i]) <= k_px);

/** What the tree lacks or has otherwise than the program drew it, in words. */
export function differences(controls, found) {
  const wrong = [];
  const seen = new Set();
  for (const { id, role, name, rect } of controls) {
    const node = found.get(id);
    const what = `${role} "${name}" (${id})`;
    if (seen.has(id)) wrong.push(`${what} has the id of another`);
    seen.add(id);
    if (!name) wrong.push(`${what} has no name`);
    if (!node) wrong.push(`${what} is not in the tree`);
    else if (node.role !== (tree_roles[role] ?? role)) wrong.push(`${what} is a ${node.role} in the tree`);
    else if (node.name !== name.trim()) wrong.push(`${what} is called "${node.name}" in the tree`);
    else if (!near(node.seen, rect)) wrong.push(`${what} is drawn at ${rect} and stands at ${node.seen}`);
  }
  return wrong;
}

const right = ([x, , w]) => x + w;
const bottom = ([, y, , h]) => y + h;
/** Room between two boxes, sideways or up and down; below 0 when they lie over each other. */
function room(a, b) {
  const across = Math.max(a[0] - right(b), b[0] - right(a));
  const along = Math.max(a[1] - bottom(b), b[1] - bottom(a));
  return Math.max(across, along);
}

/** Controls that are lower than `least.high`, or nearer to another than `least.apart`, in words. */
export function too_small(controls, found, least) {
  const wrong = [];
  const whole = controls.map((one) => ({ ...one, box: found.get(one.id)?.whole ?? one.rect }))
    .filter(({ rect }) => rect[2] > 0 && rect[3] > 0);
  whole.forEach((one, i) => {
    if (one.box[3] < least.high - 0.5)
      wrong.push(`${one.role} "${one.name}" (${one.id}) is ${one.box[3]} high`);
    for (const other of whole.slice(i + 1)) {
      const gap = room(one.rect, other.rect);
      if (gap < least.apart - 0.5)
        wrong.push(`${one.role} "${one.name}" (${one.id}) is ${gap.toFixed(1)} from ${other.role} "${other.name}" (${other.id})`);
    }
  });
  return wrong;
}
