/**
 * What the CASE standard asks of a package, written out again here from 1EdTech, Competencies and Academic Standards
 * Exchange (CASE) Service, version 1.1, final release, information model of 24 January 2025 (RF in a public
 * transcription; the required fields agree with two published packages). Nothing of our reader or writer is used.
 */
import { expect, test } from 'vitest';
import { writeCasePackage } from '../../shared/case/index.ts';
import { nameUuid } from '../../shared/case/name-uuid.ts';
import { demoLibrary } from '../demo.ts';

type Json = Record<string, unknown>;

/** Needed and allowed fields of each part inside a package. */
const FIELDS: Readonly<Record<string, { readonly needed: string; readonly allowed: string }>> = {
  CFDocument: {
    needed: 'identifier uri creator title lastChangeDateTime',
    allowed:
      'frameworkType caseVersion officialSourceURL publisher description subject subjectURI language version adoptionStatus statusStartDate statusEndDate licenseURI notes extensions',
  },
  CFItem: {
    needed: 'identifier uri fullStatement lastChangeDateTime',
    allowed:
      'alternativeLabel CFItemType CFItemTypeURI humanCodingScheme listEnumeration abbreviatedStatement conceptKeywords conceptKeywordsURI notes subject subjectURI language educationLevel licenseURI statusStartDate statusEndDate extensions',
  },
  CFAssociation: {
    needed: 'identifier uri associationType originNodeURI destinationNodeURI lastChangeDateTime',
    allowed: 'sequenceNumber CFAssociationGroupingURI notes extensions',
  },
};
const TYPES =
  'isChildOf isPeerOf isPartOf exactMatchOf precedes isRelatedTo replacedBy exemplar hasSkillLevel isTranslationOf'.split(
    ' ',
  );
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;
const DATE_TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d+)?(?:Z|[+-]\d\d:\d\d)$/;
const LISTS_OF_TEXT = ['subject', 'educationLevel', 'conceptKeywords'];
const OBJECTS = [
  'extensions',
  'originNodeURI',
  'destinationNodeURI',
  'subjectURI',
  'licenseURI',
  'CFItemTypeURI',
];

const isObject = (value: unknown): value is Json =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function entityFaults(kind: string, entity: Json): readonly string[] {
  const { needed = '', allowed = '' } = FIELDS[kind] ?? {};
  const wanted = needed.split(' ');
  const may = new Set([...wanted, ...allowed.split(' ')]);
  const faults = wanted.filter((field) => !(field in entity)).map((field) => `${kind} without ${field}`);
  for (const [field, value] of Object.entries(entity)) {
    if (!may.has(field)) faults.push(`${kind} with ${field}`);
    const isRight = LISTS_OF_TEXT.includes(field)
      ? Array.isArray(value) && value.every((text) => typeof text === 'string')
      : OBJECTS.includes(field)
        ? isObject(value)
        : field === 'sequenceNumber'
          ? Number.isInteger(value)
          : typeof value === 'string' && value !== '';
    if (!isRight) faults.push(`${kind}.${field} of another type`);
  }
  if (!UUID.test(String(entity['identifier']))) faults.push(`${kind}: identifier`);
  if (!URL.canParse(String(entity['uri']))) faults.push(`${kind}: uri`);
  if (!DATE_TIME.test(String(entity['lastChangeDateTime']))) faults.push(`${kind}: lastChangeDateTime`);
  return faults;
}

/** All that is not as the standard has it, and a tree that does not hang together. */
function packageFaults(given: Json): readonly string[] {
  const { CFDocument, CFItems = [], CFAssociations = [], ...rest } = given;
  if (!isObject(CFDocument)) return ['no CFDocument'];
  const items = CFItems as readonly Json[];
  const ties = CFAssociations as readonly Json[];
  const faults = [
    ...Object.keys(rest)
      .filter((key) => !['CFDefinitions', 'CFRubrics', 'extensions'].includes(key))
      .map((key) => `package with ${key}`),
    ...entityFaults('CFDocument', CFDocument),
    ...items.flatMap((item) => entityFaults('CFItem', item)),
    ...ties.flatMap((tie) => entityFaults('CFAssociation', tie)),
  ];
  if ('caseVersion' in CFDocument && CFDocument['caseVersion'] !== '1.1') faults.push('caseVersion');
  const nodes = new Map([CFDocument, ...items].map((node) => [node['identifier'], node]));
  const everything = [CFDocument, ...items, ...ties].map(({ identifier }) => identifier);
  if (new Set(everything).size !== everything.length) faults.push('identifier twice');
  const parents = new Map<unknown, unknown>();
  for (const { associationType, originNodeURI, destinationNodeURI } of ties) {
    const type = String(associationType);
    if (!TYPES.includes(type) && !type.startsWith('ext:')) faults.push(`associationType ${type}`);
    for (const end of [originNodeURI, destinationNodeURI]) {
      if (!isObject(end)) continue;
      for (const field of ['title', 'identifier', 'uri'])
        if (typeof end[field] !== 'string') faults.push(`link without ${field}`);
      const node = nodes.get(end['identifier']);
      if (node === undefined) faults.push('link to nothing');
      else if (node['uri'] !== end['uri']) faults.push('link with another uri');
    }
    if (type !== 'isChildOf' || !isObject(originNodeURI) || !isObject(destinationNodeURI)) continue;
    if (parents.has(originNodeURI['identifier'])) faults.push('two parents');
    parents.set(originNodeURI['identifier'], destinationNodeURI['identifier']);
  }
  for (const { identifier } of items) {
    let at: unknown = identifier;
    for (let steps = 0; steps <= items.length && parents.has(at); steps += 1) at = parents.get(at);
    if (at !== CFDocument['identifier']) faults.push('item outside the tree');
  }
  return faults;
}

const packages = demoLibrary.curricula.frameworks.map((framework) => ({
  id: framework.id,
  framework,
  written: JSON.parse(JSON.stringify(writeCasePackage(framework, '2026-11-29T08:00:00Z'))) as Json,
}));

test.each(packages)('$id is a package as CASE 1.1 has it', ({ written, framework }) => {
  expect(packageFaults(written)).toEqual([]);
  // Everything of the framework is there: each stage and each outcome once.
  expect((written['CFItems'] as unknown[]).length).toBe(framework.stages.length + framework.outcomes.length);
});

test('no identifier serves in two packages', () => {
  const all = packages.flatMap(({ written }) =>
    [
      written['CFDocument'],
      ...(written['CFItems'] as unknown[]),
      ...(written['CFAssociations'] as unknown[]),
    ].map((node) => (node as Json)['identifier']),
  );
  expect(new Set(all).size).toBe(all.length);
});

test('statements are not passed off as the publisher’s', () => {
  for (const { written, framework } of packages) {
    const { creator, notes } = written['CFDocument'] as Json;
    expect(creator).not.toBe(framework.publisher);
    expect(String(notes)).toContain('in our own words');
    expect(String(notes)).toContain(framework.licence);
  }
});

/** One breach of each rule: the checker sees it, or it proves nothing. */
test.each<[string, (copy: { CFDocument: Json; CFItems: Json[]; CFAssociations: Json[] }) => void, string]>([
  ['creator left out', ({ CFDocument }) => delete CFDocument['creator'], 'CFDocument without creator'],
  [
    'statement left out',
    ({ CFItems }) => delete CFItems[0]?.['fullStatement'],
    'CFItem without fullStatement',
  ],
  [
    'type left out',
    ({ CFAssociations }) => delete CFAssociations[0]?.['associationType'],
    'CFAssociation without associationType',
  ],
  [
    'a field of our own',
    ({ CFItems }) => Object.assign(CFItems[0] ?? {}, { status: 'RF' }),
    'CFItem with status',
  ],
  [
    'an empty text',
    ({ CFDocument }) => Object.assign(CFDocument, { publisher: '' }),
    'CFDocument.publisher of another type',
  ],
  [
    'a subject as text',
    ({ CFItems }) => Object.assign(CFItems.at(-1) ?? {}, { subject: 'history' }),
    'CFItem.subject of another type',
  ],
  [
    'a slug for a UUID',
    ({ CFItems }) => Object.assign(CFItems[0] ?? {}, { identifier: 'ks1' }),
    'CFItem: identifier',
  ],
  [
    'no time',
    ({ CFItems }) => Object.assign(CFItems[0] ?? {}, { lastChangeDateTime: '2026-11-29' }),
    'CFItem: lastChangeDateTime',
  ],
  ['an older version', ({ CFDocument }) => Object.assign(CFDocument, { caseVersion: '1.0' }), 'caseVersion'],
  [
    'a type nobody knows',
    ({ CFAssociations }) => Object.assign(CFAssociations[0] ?? {}, { associationType: 'teaches' }),
    'associationType teaches',
  ],
  ['an item twice', ({ CFItems }) => CFItems.push({ ...CFItems[0] }), 'identifier twice'],
  ['an item left hanging', ({ CFAssociations }) => CFAssociations.pop(), 'item outside the tree'],
  ['two parents', ({ CFAssociations }) => CFAssociations.push({ ...CFAssociations[0] }), 'two parents'],
])('%s is seen', (_, spoil, fault) => {
  const copy = structuredClone(packages[0]?.written) as unknown as Parameters<typeof spoil>[0];
  spoil(copy);
  expect(packageFaults(copy as unknown as Json)).toContain(fault);
});

test('names become the UUID that RFC 9562 prints in appendix A.4 (FM; the value again by Python’s uuid module)', () => {
  expect(nameUuid('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe(
    '2ed6657d-e927-568b-95e1-2665a8aea6a2',
  );
});
