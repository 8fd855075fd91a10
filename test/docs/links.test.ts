import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, it } from 'vitest'
import { findBrokenLinks } from '../../docs/typedoc/findBrokenLinks.js'

const site = mkdtempSync(join(tmpdir(), 'links-'))
afterAll(() => rmSync(site, { recursive: true }))

it('a missing page, file or anchor is found; what exists, and another site, is not', () => {
  mkdirSync(join(site, 'guides'))
  writeFileSync(
    join(site, 'index.html'),
    '<h1 id="top">T</h1><a href="#top"></a><a href="#gone"></a><a href="guides/oil%201.html#grade"></a><a href="guides/"></a>',
  )
  writeFileSync(
    join(site, 'guides/oil 1.html'),
    '<h2 id="grade">G</h2><a href="../index.html#top"></a><a href="../index.html#no"></a><img src="a.svg"><a href="https://example.org/x#y"></a>',
  )
  const { links, broken } = findBrokenLinks(site)
  expect(links).toBe(7)
  expect([...broken].sort()).toEqual([
    'guides/oil 1.html -> ../index.html#no',
    'guides/oil 1.html -> a.svg',
    'index.html -> #gone',
    'index.html -> guides/',
  ])
})
