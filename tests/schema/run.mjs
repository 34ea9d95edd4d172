// The published JSON Schemas, judged by a validator that is not ours: every file we ship fits, and
// each fault of a list does not. Prints the line that tests/run reads.

import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import Ajv from 'ajv';
import Ajv2020 from 'ajv/dist/2020.js';

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, '..', '..');
const assets = join(root, 'assets');
const program = process.env.TREADLE ?? join(root, 'build', 'release', 'treadle');
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
  const validator = new Validator({ allErrors: true, strict: true, allowUnionTypes: true });
  if (file !== 'job.schema.json') validator.addSchema(read('schema', 'job.schema.json'), 'job.schema.json');
  return validator.compile(schema);
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
  'layouts in version 1': (file) => (file.layouts = []),
  'a layout without its kind': (file) => with_layout(file, (layout) => delete layout.kind),
  'a layout with a number for a value': (file) => with_layout(file, (layout) => (layout.values[0].text = 8)),
  'a layout with an entry that nobody knows': (file) => with_layout(file, (layout) => (layout.extra = 1)),
};

/** The file as version 2 with a layout as the program writes one, spoilt. */
function with_layout(file, spoil) {
  const [kind, ...values] = ['ring', 'bar=round 1/2 in', 'diameter=8 in', 'grade=A36'];
  file.layouts = JSON.parse(execFileSync(program, ['layout', kind, ...values, '--job'], { encoding: 'utf8' })).layouts;
  file.version = 2;
  spoil(file.layouts[0]);
}

function job_files() {
  const fits = compiled('job.schema.json');
  const files = readdirSync(join(assets, 'demo')).filter((name) => name.endsWith('.json'));
  check('there are demo jobs in inch and in metric', files.length >= 2);
  for (const name of files) {
    check(`demo/${name} fits the schema`, fits(read('demo', name)), JSON.stringify(fits.errors?.slice(0, 3)));
    const laid_out = read('demo', name);
    with_layout(laid_out, () => {});
    check(`demo/${name} with a layout fits the schema`, fits(laid_out), JSON.stringify(fits.errors?.slice(0, 3)));
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

/** What the program writes, or reads in the tests of its room, with faults of each kind. */
const kinds = [
  {
    schema: 'bundle.schema.json',
    examples: () => [written('jobs', ...demos()), written('jobs', demos()[0])],
    faults: {
      'no format': (file) => delete file.format,
      'another format': (file) => (file.format = 'treadle-job'),
      'a newer version': (file) => (file.version = 2),
      'version as text': (file) => (file.version = '1'),
      'no jobs': (file) => delete file.jobs,
      'jobs as an object': (file) => (file.jobs = {}),
      'an entry that nobody knows': (file) => (file.extra = 1),
      'a job in no state': (file) => delete file.jobs[0].state,
      'a job in a state that nobody knows': (file) => (file.jobs[0].state = 'burnt'),
      'a job without its file': (file) => delete file.jobs[0].file,
      'a job whose file is text': (file) => (file.jobs[0].file = '{}'),
      'a job of a newer version': (file) => (file.jobs[0].file.version = 3),
      'a job with a number for a length': (file) => (file.jobs[0].file.parts[0].length = 8),
      'more jobs than fit': (file) => (file.jobs = Array(501).fill(file.jobs[0])),
    },
  },
  {
    schema: 'shop.schema.json',
    examples: () => demos().map((path) => written('shop', path)),
    faults: {
      'no format': (file) => delete file.format,
      'another format': (file) => (file.format = 'treadle-bundle'),
      'a newer version': (file) => (file.version = 2),
      'version as text': (file) => (file.version = '1'),
      'no shop': (file) => delete file.shop,
      'a shop as a list': (file) => (file.shop = []),
      'an entry that nobody knows': (file) => (file.extra = 1),
      'a station without its kind': (file) => delete file.shop.machine.stations[0].kind,
      'a station of a kind that nobody knows': (file) => (file.shop.machine.stations[0].kind = 'laser'),
      'a force without its unit': (file) => (file.shop.machine.stations[0].force = 50),
      'a bar without its length': (file) => delete file.shop.rack[0].length,
      'a name that is a number': (file) => (file.shop.name = 7),
    },
  },
  {
    schema: 'shelf.schema.json',
    examples: () => [example('shelf.json')],
    faults: {
      'no format': (file) => delete file.format,
      'another format': (file) => (file.format = 'treadle-job'),
      'a newer version': (file) => (file.version = 2),
      'no entries': (file) => delete file.entries,
      'an entry without a title': (file) => delete file.entries[0].title,
      'an empty title': (file) => (file.entries[0].title = ''),
      'a kind that nobody knows': (file) => (file.entries[0].kind = 'tool'),
      'an address beside the file': (file) => (file.entries[0].href = 'x'),
      'more entries than fit': (file) => (file.entries = Array(201).fill(file.entries[0])),
      ...Object.fromEntries(
        ['/a.json', '../a.json', 'a/../b.json', './a.json', 'a//b.json', 'a\\b.json', 'http://h/a.json', 'a%2e.json',
          'a b.json', 'a.html', '.json', 'a.json\n', '', 'a/', `${'a'.repeat(196)}.json`]
          .map((name) => [`the file ${JSON.stringify(name.slice(0, 20))}`, (file) => (file.entries[0].file = name)])),
    },
  },
  {
    schema: 'lesson.schema.json',
    examples: () => readdirSync(join(assets, 'lessons')).sort().map((name) => read('lessons', name)),
    faults: {
      'no format': (file) => delete file.format,
      'another format': (file) => (file.format = 'treadle-job'),
      'a newer version': (file) => (file.version = 2),
      'units nobody has': (file) => (file.units = 'furlong'),
      'no steps': (file) => (file.steps = []),
      'a step that nobody knows': (file) => (file.steps[0].do = 'sing'),
      'a step without a title': (file) => delete file.steps[0].title,
      'an entry that nobody knows': (file) => (file.steps[0].extra = 1),
      'more steps than fit': (file) => (file.steps = Array(61).fill(file.steps[0])),
    },
  },
  {
    schema: 'progress.schema.json',
    examples: () => [example('progress.json')],
    faults: {
      'no format': (file) => delete file.format,
      'another format': (file) => (file.format = 'treadle-job'),
      'a newer version': (file) => (file.version = 2),
      'no jobs': (file) => delete file.jobs,
      'a job without its name': (file) => delete file.jobs[0].job,
      'a job without its steps': (file) => delete file.jobs[0].steps,
      'a step without its place': (file) => delete file.jobs[0].steps[0].place,
      'a step with an empty place': (file) => (file.jobs[0].steps[0].place = ''),
      'a step without its content': (file) => delete file.jobs[0].steps[0].content,
      'a count below zero': (file) => (file.jobs[0].steps[0].ticked = -1),
      'a count with parts': (file) => (file.jobs[0].steps[0].pieces = 1.5),
      'too many pieces': (file) => (file.jobs[0].steps[0].pieces = 100001),
      'held as text': (file) => (file.jobs[0].held = 'yes'),
      'an entry that nobody knows': (file) => (file.jobs[0].who = 'me'),
    },
  },
];

function demos() {
  return readdirSync(join(assets, 'demo')).sort().map((name) => join(assets, 'demo', name));
}

function written(...words) {
  return JSON.parse(execFileSync(program, words, { encoding: 'utf8', maxBuffer: 64 << 20 }));
}

function example(name) {
  return JSON.parse(readFileSync(join(here, 'examples', name), 'utf8'));
}

function other_kinds() {
  for (const { schema, examples, faults } of kinds) {
    const fits = compiled(schema);
    for (const [at, file] of examples().entries()) {
      check(`${schema} takes its example ${at + 1}`, fits(file), JSON.stringify(fits.errors?.slice(0, 3)));
      for (const [fault, spoil] of Object.entries(faults)) {
        const bad = structuredClone(file);
        spoil(bad);
        check(`${schema} does not take ${fault}`, !fits(bad));
      }
    }
  }
}

for (const part of [job_files, catalog_files, other_kinds]) {
  try {
    part();
  } catch (error) {
    check(part.name, false, error.message);
  }
}
console.log(`SCHEMA ${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
