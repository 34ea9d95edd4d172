// The published JSON Schemas, judged by a validator that is not ours: every file we ship fits, and
// each fault of a list does not. Prints the line that tests/run reads.

import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import Ajv from 'ajv';
import Ajv2020 from 'ajv/dist/2020.js';

const assets = join(dirname(fileURLToPath(import.meta.url)), '..', '..', 'assets');
let passed = 0;
let failed = 0;

function check(name, holds, why = '') {
  if (holds) passed += 1;
  else failed += 1;
  console.log(`  ${holds ? 'pass' : 'FAIL'}  ${name}${holds || !why ? '' : `\n        ${why}`}`);
}

function read(...path) {
  return JSON.parse(readFileSync(join(assets, ...path), 'utf8'));
}

function compiled(file) {
  const schema = read('schema', file);
  const Validator = String(schema.$schema).includes('2020-12') ? Ajv2020 : Ajv.default ?? Ajv;
  return new Validator({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);
}

/** Each changes a whole file so that it must be refused. */
const faults = {
  'no format': (file) => delete file.format,
  'another format': (file) => (file.format = 'something-else'),
  'a newer version': (file) => (file.version = 999),
  'version as text': (file) => (file.version = '1'),
  'parts as an object': (file) => (file.parts = {}),
  'a part without a grade': (file) => delete file.parts[0].grade,
  'a count of zero': (file) => (file.parts[0].count = 0),
  'a length without a unit': (file) => (file.parts[0].length = 8),
  'an operation that nobody knows': (file) => (file.parts[0].operations[0].do = 'polish'),
};

function job_files() {
  const fits = compiled('job.schema.json');
  const files = readdirSync(join(assets, 'demo')).filter((name) => name.endsWith('.json'));
  check('there are demo jobs in inch and in metric', files.length >= 2);
  for (const name of files) {
    check(`demo/${name} fits the schema`, fits(read('demo', name)), JSON.stringify(fits.errors?.slice(0, 3)));
    for (const [fault, spoil] of Object.entries(faults)) {
      const file = read('demo', name);
      spoil(file);
      check(`demo/${name} with ${fault} does not fit`, !fits(file));
    }
  }
}

function catalog_files() {
  for (const name of readdirSync(join(assets, 'catalog'))) {
    const schema = name.replace('.json', '.schema.json');
    if (!existsSync(join(assets, 'schema', schema))) continue;
    const fits = compiled(schema);
    check(`catalog/${name} fits the schema`, fits(read('catalog', name)), JSON.stringify(fits.errors?.slice(0, 3)));
  }
}

for (const part of [job_files, catalog_files]) {
  try {
    part();
  } catch (error) {
    check(part.name, false, error.message);
  }
}
console.log(`SCHEMA ${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
