import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'

const TYPES = /^(Added|Changed|Deprecated|Removed|Fixed|Security|Added and changed): \S/

it('CHANGELOG.md keeps the form of Keep a Changelog: unreleased first, then versions with dates, newest first', () => {
  const [head = '', ...versions] = readFileSync('CHANGELOG.md', 'utf8').split(/^## /m)
  expect(head).toContain('keepachangelog.com')
  const titles = versions.map((version) => version.split('\n')[0] ?? '')
  expect(titles[0]).toBe('[Unreleased]')
  const dates = titles.slice(1).map((title) => /^\[\d+\.\d+\.\d+\] - (\d{4}-\d{2}-\d{2})$/.exec(title)?.[1])
  expect(dates.length).toBeGreaterThan(0)
  expect(dates).not.toContain(undefined)
  expect(dates).toEqual([...dates].sort().reverse())
  for (const version of versions) {
    const sections = [...version.matchAll(/^### (.*)$/gm)].map(([, title = '']) => title)
    expect(sections.length).toBeGreaterThan(0)
    expect(sections.filter((title) => !TYPES.test(title))).toEqual([])
  }
  // What can change a result for the same input is what a reader looks for first.
  expect(versions[0]).toMatch(/^\[Unreleased\]\n\n### Changed: figures/)
})
