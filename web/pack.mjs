// The last step of the page's build: from its parts the two forms that are handed out.
//
//   node web/pack.mjs --parts build/web/parts --out build/web/site --version 0.1.0
//
// site/                    for a host. All names but index.html, sw.js, build.json and the one-file
//                          copy hold a hash of their content, so files of two builds never meet.
// treadle-<version>.html   everything in one file, for file://. Beside the site, and in it to be had.
//
// One build id, made of all contents, stands in index.html, the start, the worker and build.json.
// The same parts give the same bytes.

import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { licences } from './pack/licences.mjs';
import { one_file } from './pack/one_file.mjs';
import { hash_of, sum_of } from './pack/sums.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');

function wishes() {
  const all = { parts: '', out: '', version: '', pages: join(root, 'web', 'site') };
  for (let i = 2; i + 1 < process.argv.length; i += 2) all[process.argv[i].replace(/^--/, '')] = process.argv[i + 1];
  for (const [name, value] of Object.entries(all)) if (!value) throw new Error(`pack: --${name} is missing`);
  return all;
}

/** What the program is made from, so that two builds of the same sources say so. */
function sources_hash() {
  const sum = createHash('sha256');
  const walk = (folder) => {
    for (const entry of readdirSync(join(root, folder), { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) walk(path);
      else sum.update(path).update('\0').update(readFileSync(join(root, path)));
    }
  };
  ['assets', 'core', 'web'].forEach(walk);
  return sum.update(readFileSync(join(root, 'CMakeLists.txt'))).digest('hex').slice(0, 12);
}

/** A script keeps its name but for the ending: every host knows what .js is, not every one .mjs. */
function hashed_name(name, content) {
  const dot = name.lastIndexOf('.');
  return `${name.slice(0, dot)}.${hash_of(content)}${name.slice(dot).replace('.mjs', '.js')}`;
}

class Site {
  files = new Map(); // name in the sources -> { file, content, integrity }
  add(name, content) {
    const bytes = Buffer.from(content);
    this.files.set(name, { file: hashed_name(name, bytes), content: bytes, integrity: sum_of(bytes) });
  }
  /** With the names of parts, as `pattern` finds them, turned into those of their files. */
  linked(text, pattern) {
    return text.replace(pattern, (whole, before, name, after) => {
      const found = this.files.get(name);
      if (!found) throw new Error(`pack: ${name} is named and is no part`);
      return before + found.file + after;
    });
  }
}

/** index.html: addresses with a hash, sums for all that is run or lays out. */
function index_page(site, text, id) {
  return text.replaceAll('TREADLE_ID', id).replace(
    /<(link|script)\b([^>]*?) (href|src)="([\w.-]+)"/g, (whole, tag, before, what, name) => {
      const { file, integrity } = site.files.get(name);
      const is_checked = tag === 'script' || /rel="(stylesheet|modulepreload)"/.test(before);
      const sum = is_checked ? ` integrity="${integrity}"` : '';
      return `<${tag}${before} ${what}="${file}"${sum}`;
    });
}

function pack() {
  const { parts, out, version, pages } = wishes();
  const page = (name) => readFileSync(join(pages, name), 'utf8');
  const site = new Site();
  const raw = [...readdirSync(parts)].sort().filter((name) => /\.(wasm|otf|png)$/.test(name));
  for (const name of raw) site.add(name, readFileSync(join(parts, name)));
  for (const name of ['icon.svg', 'icon-maskable.svg', 'guard.js', 'old.js', 'cutter.mjs', 'cutting.mjs'])
    site.add(name, page(name));
  site.add('licences.txt', licences(root));
  site.add('app.mjs', site.linked(readFileSync(join(parts, 'app.mjs'), 'utf8'), /(["'])(app\.wasm)(["'])/g));
  site.add('site.css', site.linked(page('site.css'), /(url\()([\w.-]+)(\))/g));
  const manifest = JSON.parse(page('treadle.webmanifest'));
  for (const name of raw.filter((one) => /^icon-\d+\.png$/.test(one))) {
    const size = /\d+/.exec(name)[0];
    manifest.icons.push({ src: name, sizes: `${size}x${size}`, type: 'image/png', purpose: 'any' });
  }
  for (const icon of manifest.icons) icon.src = site.files.get(icon.src).file;
  site.add('treadle.webmanifest', JSON.stringify(manifest, null, 1));

  const templates = Object.fromEntries(['boot.mjs', 'index.html', 'sw.js'].map((name) => [name, page(name)]));
  const all = [...site.files].map(([name, { integrity }]) => [name, integrity]);
  const id = hash_of(JSON.stringify([version, all, templates]));
  const copy = `treadle-${version}.html`;
  const facts = { id, version, sources: sources_hash(), copy };
  const named = (names) => Object.fromEntries(names.map((name) => {
    const { file, integrity } = site.files.get(name);
    return [name, [file, integrity]];
  }));
  const loaded = named(raw.filter((name) => !name.endsWith('.png')).concat('app.mjs', 'cutter.mjs', 'cutting.mjs', 'licences.txt'));
  site.add('boot.mjs', templates['boot.mjs'].replace('TREADLE_BUILD', JSON.stringify({ ...facts, files: loaded })));

  const index = index_page(site, templates['index.html'], id);
  const kept = [['./', sum_of(index)], ...[...site.files.values()].map(({ file, integrity }) => [file, integrity])];
  const single = one_file({ facts, site, pages: page, index: templates['index.html'],
    program: readFileSync(join(parts, 'app.mjs'), 'utf8') });

  // Whole or not at all: a build that failed leaves no half site.
  rmSync(out, { recursive: true, force: true });
  mkdirSync(out, { recursive: true });
  for (const { file, content } of site.files.values()) writeFileSync(join(out, file), content);
  writeFileSync(join(out, 'sw.js'), templates['sw.js'].replace('TREADLE_BUILD', JSON.stringify({ id, files: kept })));
  writeFileSync(join(out, 'build.json'), JSON.stringify({ build: id, version, sources: facts.sources }) + '\n');
  // An empty one, so that a page that asks finds something; the host's own takes its place.
  writeFileSync(join(out, 'shelf.json'), '{"format":"treadle-shelf","version":1,"entries":[]}\n');
  writeFileSync(join(out, copy), single);
  writeFileSync(join(out, 'index.html'), index);
  const beside = join(out, '..');
  for (const name of readdirSync(beside)) if (/^treadle-[\w.-]*\.html(\.sha256)?$/.test(name)) rmSync(join(beside, name));
  writeFileSync(join(beside, copy), single);
  writeFileSync(join(beside, `${copy}.sha256`), `${createHash('sha256').update(single).digest('hex')}  ${copy}\n`);
  console.log(`pack: version ${version}, build ${id}, one file of ${single.length} bytes`);
}

if (!existsSync(join(root, 'web', 'site', 'index.html'))) throw new Error('pack: run it from the sources');
pack();
