import { describe, expect, it } from 'vitest'
import { drawScale } from '../../../src/card/html/drawScale.js'

/** Labels with the middle of each, and the places of the pointers, in millimetres from the left. */
function readScale(settings: readonly { readonly label: string; readonly value: number }[]) {
  const scale = { lowest: 20, highest: 110, graduation: 1 }
  const text = drawScale({ kind: 'scale', scale, settings }, 'a scale')?.html ?? ''
  const labels = [...text.matchAll(/<text ([^>]*)>([A-Z]\d [^<]*)<\/text>/g)].map(
    ([, attributes = '', label = '']) => ({
      label,
      at: Number(/ ?\bx="([^"]*)"/.exec(attributes)?.[1]),
    }),
  )
  const pointers = [...text.matchAll(/L(-?[\d.]+) [\d.]+Z/g)].map(([, x]) => Number(x))
  return { labels, pointers }
}

describe('drawScale', () => {
  it('sets no label above the pointer of another: 30 and 31 move apart, and 40 makes room', () => {
    const { labels, pointers } = readScale([
      { label: 'F2 30', value: 30 },
      { label: 'D1 31', value: 31 },
      { label: 'F1 40', value: 40 },
    ])
    expect(labels.map(({ label }) => label)).toEqual(['F2 30', 'D1 31', 'F1 40'])
    // 84 mm for 90 N·m, from 4 mm.
    expect(pointers).toEqual([13.33, 14.27, 22.67])
    for (const [place, { label, at }] of labels.entries()) {
      const distances = pointers.map((x) => Math.abs(x - at))
      expect(distances.indexOf(Math.min(...distances)), label).toBe(place)
    }
  })

  it('a label with room stands at its pointer, and none leaves the drawing or touches another', () => {
    expect(readScale([{ label: 'D1 65', value: 65 }]).labels).toEqual([{ label: 'D1 65', at: 46 }])
    const ends = readScale(
      [20, 20, 21, 109, 110].map((value, place) => ({ label: `P${place} ${value}`, value })),
    )
    let end = -2
    for (const { label, at } of ends.labels) {
      const half = label.length * 0.98
      expect(at - half, label).toBeGreaterThanOrEqual(end + 2 - 0.02)
      end = at + half
    }
    expect(end).toBeLessThanOrEqual(92.01)
  })
})
