import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { getLanguageService, type MarkedString, TextDocument } from 'vscode-json-languageservice'
import { DOCUMENT_NAMES } from '../../src/spec/documents.js'
import { readGoodDocuments, readShortDocuments } from '../support/fixtures.js'

// The texts that an editor shows with the published schemas. Without a request service, nothing is fetched.
const service = getLanguageService({})
service.configure({
  schemas: DOCUMENT_NAMES.map((kind) => {
    const schema = JSON.parse(readFileSync(`schemas/v1/${kind}.json`, 'utf8'))
    return { uri: schema.$id, fileMatch: [`${kind}.json`], schema }
  }),
})

/** A document with `▮` at the cursor. */
function open(kind: string, marked: string) {
  const [before = '', after = ''] = marked.split('▮')
  const document = TextDocument.create(`file:///${kind}.json`, 'json', 1, before + after)
  return { document, position: document.positionAt(before.length), json: service.parseJSONDocument(document) }
}

/** The spec sheet of one gearcase with one opening, given as JSON. */
const withOpening = (opening: string): string => `{
  "kind": "spec-sheet", "version": "1.0", "id": "ferd-2", "revision": "1",
  "machine": { "make": "Nordli", "model": "Ferd 2", "type": "utility machine" },
  "gearcases": { "rear": { "type": "final drive", "openings": { "drain": ${opening} } } }
}`

async function complete(kind: string, marked: string): Promise<readonly string[]> {
  const { document, position, json } = open(kind, marked)
  const list = await service.doComplete(document, position, json)
  return (list?.items ?? []).map(({ label }) => label)
}

async function hover(kind: string, marked: string): Promise<string> {
  const { document, position, json } = open(kind, marked)
  const contents = (await service.doHover(document, position, json))?.contents ?? []
  // In Markdown, a backslash marks characters that are not markup.
  return ([contents].flat() as readonly MarkedString[]).join('\n').replaceAll('\\', '')
}

/** The texts that are underlined. */
async function markedWords(kind: string, text: string): Promise<readonly string[]> {
  const { document, json } = open(kind, text)
  const found = await service.doValidation(document, json)
  return found.map(({ range }) => document.getText(range))
}

describe('completion', () => {
  test('inside an opening: its keys, and no others', async () => {
    const keys = await complete('spec-sheet', withOpening('{ "▮" }'))
    expect(keys).toEqual(expect.arrayContaining(['name', 'uses', 'drive', 'tightening', 'seals', 'place']))
    expect(keys).not.toContain('oilSpace')
    const uses = await complete('spec-sheet', withOpening('{ "uses": [{ "▮" }] }'))
    expect(uses).toEqual(['role', 'wheelMark'])
  })

  test('its values: roles, heads, and a torque as a text or in full', async () => {
    const roles = await complete('spec-sheet', withOpening('{ "uses": [{ "role": ▮ }] }'))
    expect(roles).toEqual(expect.arrayContaining(['"fill"', '"drain"', '"level"']))
    const headSizes = await complete('spec-sheet', withOpening('{ "drive": { "kind": ▮ } }'))
    expect(headSizes).toEqual(expect.arrayContaining(['"internal hex"', '"six-lobe"', '"not stated"']))
    const tightenings = await complete('spec-sheet', withOpening('{ "tightening": ▮ }'))
    expect(tightenings).toContain('"30 N·m (22 lbf·ft), dry [p. 62]"')
    expect(tightenings.some((label) => label.startsWith('{"kind":"torque"'))).toBe(true)
    const kinds = await complete('spec-sheet', withOpening('{ "tightening": { "kind": ▮ } }'))
    expect(kinds).toEqual(expect.arrayContaining(['"torque"', '"turns"', '"not stated"']))
  })

  test('every kind of document offers its keys at the top, `$schema` among them', async () => {
    for (const kind of DOCUMENT_NAMES) {
      const keys = await complete(kind, `{ "kind": "${kind}", "▮" }`)
      expect(keys).toEqual(expect.arrayContaining(['$schema', 'id', 'version']))
    }
  })
})

describe('hover', () => {
  test.each([
    ['{ "thr▮ead": "M18x1.5" }', /^Designation as printed: `M18x1.5`/],
    ['{ "mag▮net": true }', /^True if the plug has a magnet/],
    ['{ "drive": { "si▮ze": "10 mm", "kind": "internal hex" } }', /^The size as a designation: `10 mm`/],
  ])('explains a property: %s', async (opening, expected) => {
    expect(await hover('spec-sheet', withOpening(opening))).toMatch(expected)
  })

  test('at a short text: the property, then the notation', async () => {
    const text = await hover('spec-sheet', withOpening('{ "tight▮ening": "30 N·m, dry" }'))
    expect(text).toMatch(/^The tightening of the plug/)
    expect(text).toMatch(/Short notation. Torque or turns/)
  })

  test('at a full form: the property, then the form', async () => {
    const fullText = '{ "tight▮ening": { "kind": "not stated", "threadCondition": "dry" } }'
    const text = await hover('spec-sheet', withOpening(fullText))
    expect(text).toMatch(/^The tightening of the plug/)
    expect(text).toMatch(/a torque, turns past finger tight, or not stated/)
  })
})

describe('a mistake is underlined', () => {
  test.each([
    ['{ "tightning": "30 N·m" }', '"tightning"'],
    ['{ "uses": [{ "role": "filling" }] }', '"filling"'],
    ['{ "tightening": "30 Nm of torque" }', '"30 Nm of torque"'],
    ['{ "magnet": "yes" }', '"yes"'],
  ])('%s', async (opening, place) => {
    expect(await markedWords('spec-sheet', withOpening(opening))).toEqual([place])
  })

  test('and good documents are not, in short notation or in full', async () => {
    expect(await markedWords('spec-sheet', withOpening('{ "tightening": "30 N·m, dry [p. 62]" }'))).toEqual(
      [],
    )
    const [fullDocuments, shortDocuments] = [readGoodDocuments(), readShortDocuments()]
    expect(Math.min(fullDocuments.length, shortDocuments.length)).toBeGreaterThan(12)
    for (const { file, text, value } of [...fullDocuments, ...shortDocuments])
      expect([file, await markedWords(String(value['kind']), text)]).toEqual([file, []])
  })
})
