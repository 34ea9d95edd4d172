// The one-file copy: the page with everything inside, which asks nothing of any network.
//
// Parts lie in it as base64 of gzip: a stick compresses nothing, and the browser inflates by itself.

import { gzipSync } from 'node:zlib';

import { policy_sum } from './sums.mjs';

/** A module as a function that gives its exports. */
function as_function(text) {
  const names = [...text.matchAll(/^export (?:async )?(?:function|const) (\w+)/gm)].map(([, name]) => name);
  return `() => {\n${text.replace(/^export (?=async |function|const)/gm, '')}\nreturn { ${names.join(', ')} };\n}`;
}

function program_function(text) {
  const made = text.replace(/^export default (\w+);?\s*$/m, 'return { default: $1 };');
  if (made === text) throw new Error('pack: the program exports nothing');
  return `() => {\n${made}\n}`;
}

/** The build as boot.mjs takes it, with its parts inside. */
function build_text({ facts, site, pages, program }) {
  const inside = Object.fromEntries([...site.files].filter(([name]) => /\.(wasm|otf)$|^licences/.test(name))
    .map(([name, { content }]) => [name, gzipSync(content, { level: 9 }).toString('base64')]));
  const facts_text = JSON.stringify({ ...facts, inside }).replace(/\}$/, '');
  return `${facts_text}, "modules": {
'app.mjs': ${program_function(program)},
'cutting.mjs': ${as_function(pages('cutting.mjs'))},
'cutter.mjs': ${as_function(pages('cutter.mjs'))} } }`;
}

function script_of(parts) {
  const boot = parts.pages('boot.mjs');
  const script = `${parts.pages('guard.js')}\n${boot.replace('TREADLE_BUILD', () => build_text(parts))}`;
  if (/<\/script|<!--/i.test(script)) throw new Error('pack: a script would end inside the one-file copy');
  return script;
}

export function one_file(parts) {
  const script = script_of(parts);
  const old = parts.pages('old.js');
  // The typeface comes from the bytes inside: no address, not even one of data.
  const style = parts.pages('site.css').replace(/^@font-face .*\n/gm, '');
  const icon = `data:image/svg+xml;base64,${Buffer.from(parts.pages('icon.svg')).toString('base64')}`;
  const policy = `default-src 'none'; script-src ${policy_sum(script)} ${policy_sum(old)} 'wasm-unsafe-eval'; `
    + `style-src ${policy_sum(style)}; worker-src blob:; img-src data: blob:; frame-src 'self' blob:; `
    + `base-uri 'none'; form-action 'none'`;
  const put = (text, pattern, by) => {
    if (!pattern.test(text)) throw new Error(`pack: the page has no ${pattern}`);
    return text.replace(pattern, () => by);
  };
  let page = parts.index.replaceAll('TREADLE_ID', parts.facts.id);
  page = put(page, /(?<=Content-Security-Policy" content=")[^"]*/, policy);
  page = put(page, /<link rel="icon"[^>]*>/, `<link rel="icon" href="${icon}">`);
  page = put(page, /<link rel="manifest"[^>]*>\n/, '');
  page = put(page, /<link rel="modulepreload"[^>]*>\n/, '');
  page = put(page, /<link rel="stylesheet"[^>]*>/, `<style>${style}</style>`);
  page = put(page, /<script defer src="guard.js"><\/script>\n/, '');
  page = put(page, /<script nomodule src="old.js"><\/script>/, `<script nomodule>${old}</script>`);
  return put(page, /<script type="module" src="boot.mjs"><\/script>/, `<script type="module">${script}</script>`);
}
