import { spawnSync } from 'node:child_process'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, test } from 'vitest'
import { DOCUMENT_NAMES } from '../../../src/spec/documents.js'
import { toJsonSchema } from '../../support/toJsonSchema.js'
import { readNotationVectors } from './support/notationVectors.js'

const { good, bad } = readNotationVectors()
const texts = [...good, ...bad].map(({ notation, text }) => ({
  text,
  schema: `text-${notation.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`,
}))
const expected = [...good.map(() => true), ...bad.map(() => false)]
const defs = DOCUMENT_NAMES.flatMap((kind) => Object.entries(toJsonSchema(kind)['$defs'] as object))
const schemas = Object.fromEntries(defs.filter(([name]) => name.startsWith('text-')))

describe('the list of texts is judged alike', () => {
  test('it is long enough', () => {
    expect(good.length).toBeGreaterThanOrEqual(150)
    expect(bad.length).toBeGreaterThanOrEqual(100)
    expect(new Set(texts.map(({ text, schema }) => `${schema} ${text}`)).size).toBe(texts.length)
  })

  test('by ajv in strict mode', () => {
    const ajv = new Ajv2020({ strict: true })
    const judges = new Map(Object.entries(schemas).map(([name, schema]) => [name, ajv.compile(schema)]))
    expect(texts.map(({ text, schema }) => judges.get(schema)?.(text))).toEqual(expected)
  })

  test("by Debian's jsonschema", (ctx) => {
    const python = [
      'import json, sys, jsonschema',
      'given = json.load(sys.stdin)',
      'judges = {name: jsonschema.Draft202012Validator(schema) for name, schema in given["schemas"].items()}',
      'print(json.dumps([judges[one["schema"]].is_valid(one["text"]) for one in given["texts"]]))',
    ]
    judgeElsewhere(
      ctx,
      'python3-jsonschema',
      '/usr/bin/python3',
      ['-c', 'import jsonschema'],
      ['-c', python.join('\n')],
    )
  })

  test('by the regular expressions of Perl', (ctx) => {
    const perl = [
      'use JSON::PP; local $/; my $given = decode_json(<STDIN>); my @answers;',
      'for my $one (@{$given->{texts}}) {',
      '  my $schema = $given->{schemas}{$one->{schema}}; my $text = $one->{text};',
      '  my ($pattern, $outside) = ($schema->{pattern}, $schema->{not}{pattern});',
      '  my $good = length($text) <= $schema->{maxLength} && $text =~ /$pattern/ && $text !~ /$outside/;',
      '  push @answers, $good ? JSON::PP::true : JSON::PP::false;',
      '}',
      'print encode_json(\\@answers);',
    ]
    judgeElsewhere(ctx, 'perl', '/usr/bin/perl', ['-MJSON::PP', '-e', '1'], ['-e', perl.join('\n')])
  })
})

/** Passes schemas and texts to a program in another language, which returns a list of true and false. */
function judgeElsewhere(
  ctx: { readonly skip: () => void },
  tool: string,
  program: string,
  probe: readonly string[],
  run: readonly string[],
): void {
  if (spawnSync(program, probe).status !== 0) {
    if (process.env['DRIVETRAIN_REQUIRE_TOOLS'] === '1') throw new Error(`${tool} is missing`)
    console.log(`outside tool skipped: ${tool}`)
    ctx.skip()
    return
  }
  const answer = spawnSync(program, run, { input: JSON.stringify({ schemas, texts }), encoding: 'utf8' })
  expect(answer.stderr).toBe('')
  const answers = JSON.parse(answer.stdout) as readonly boolean[]
  const disagreements = texts.filter((_text, place) => answers[place] !== expected[place])
  expect(disagreements).toEqual([])
}
