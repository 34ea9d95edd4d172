// The licences of everything the page contains, in full, from where the build took it.

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const k_docs = '/usr/share/doc';
// Name, licence, whose it is, and where the text lies.
const k_contained = [
  ['Dear ImGui', 'MIT licence', 'Omar Cornut', '.deps/imgui/LICENSE.txt'],
  ['JSON for Modern C++', 'MIT licence', 'Niels Lohmann', `${k_docs}/nlohmann-json3-dev/copyright`],
  ['B612 typeface', 'SIL Open Font License 1.1', 'Airbus and others', `${k_docs}/fonts-b612/copyright`],
  ['zlib', 'zlib licence', 'Jean-loup Gailly and Mark Adler', `${k_docs}/zlib1g-dev/copyright`],
  ['QR Code generator', 'MIT licence', 'Project Nayuki', `${k_docs}/libqrcodegen-dev/copyright`],
  ['Emscripten runtime', 'MIT licence', 'the Emscripten authors', ''],
  ['musl', 'MIT licence', 'Rich Felker and others', '/usr/share/emscripten/system/lib/libc/musl/COPYRIGHT'],
];

export function licences(root) {
  const line = '='.repeat(78);
  const texts = [['Treadle', 'MIT licence', '', 'LICENSE'], ...k_contained].map(([name, licence, owner, place]) => {
    const file = place.startsWith('/') ? place : join(root, place);
    const head = `${name}: ${licence}${owner ? `, ${owner}` : ''}`;
    const text = place && existsSync(file) ? readFileSync(file, 'utf8').trim() : '';
    return `${line}\n${head}\n${line}\n\n${text ? `${text}\n` : ''}`;
  });
  return `What Treadle is and contains, and under which licences.\n\n${texts.join('\n')}`;
}
