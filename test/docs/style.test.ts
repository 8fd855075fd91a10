import { readdirSync, readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { renderStylePage, STYLE_PAGE } from '../support/stylePage.js'

const STYLES = 'src/card/html'

it('the style page is what npm run generate writes, and shows every piece of a paper', () => {
  const page = readFileSync(STYLE_PAGE, 'utf8')
  expect(renderStylePage() === page, 'run npm run generate').toBe(true)
  // Every drawing of a picture part, the bar of a limit, the torque of a setting.
  for (const kind of ['case', 'wheel', 'bolts', 'scale', 'pour', 'jug', 'true-sizes'])
    expect(page).toContain(`<figure class="${kind}">`)
  for (const piece of [
    'svg class="limit"',
    'svg class="scale"',
    'article class="plate"',
    'article class="panel"',
  ])
    expect(page).toContain(`<${piece}`)
  for (const piece of ['steps', 'blanks', 'scenes', 'list', 'caution notice', 'hold', 'gap', 'computed'])
    expect(page).toMatch(new RegExp(`class="(?:span )?${piece}"`))
})

it('only the base style names type sizes and colours', () => {
  const files = readdirSync(STYLES).filter((name) => name.endsWith('Style.ts') && name !== 'baseStyle.ts')
  expect(files).toContain('wallStyle.ts')
  for (const name of files)
    expect(readFileSync(`${STYLES}/${name}`, 'utf8').match(/[0-9]pt\b|#[0-9a-f]{3,6}\b/g), name).toBeNull()
})
