import { expect, test } from 'vitest'
import { readYaml } from '../../src/cli/readYaml.js'

const slips = (text: string) =>
  readYaml(text, 'a.yaml').findings.map(({ code, severity, path, params }) => [code, severity, path, params])

test('a comma in braces ends a text', () => {
  expect(slips('intervals: { repeat: 200 h, 12 months }')).toEqual([
    ['spec/yaml-comma-in-braces', 'warning', '/intervals/12 months', { text: '12 months' }],
  ])
  expect(slips('list:\n  - a\n  - { b: 1 h, 2 km, c: 3 }')).toEqual([
    ['spec/yaml-comma-in-braces', 'warning', '/list/1/2 km', { text: '2 km' }],
  ])
  expect(slips('intervals: { repeat: "200 h, 12 months", first: 50 h }\nnothing:\nlist: [a, b]')).toEqual([])
})

test('a comment that touches its sign cuts a text', () => {
  expect(slips('gearcases:\n  rear:\n    place: plug #2')).toEqual([
    ['spec/yaml-comment-in-text', 'warning', '/gearcases/rear/place', { text: 'plug', comment: '2' }],
  ])
  expect(
    slips('list: [plug, drain] # both\nplace: plug # the second\nother: "plug #2"\n#whole line\nlast: a#b'),
  ).toEqual([])
})

test('a key that is true or false', () => {
  expect(slips('services:\n  true: 200 h')).toEqual([
    ['spec/yaml-key-is-boolean', 'warning', '/services/true', { key: 'true' }],
  ])
  expect(slips('services:\n  "true": 200 h\n  on: x\nyellowMetal: true')).toEqual([])
})
