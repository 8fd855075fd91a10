import { expect, it } from 'vitest'
import { drawTrueSizes } from '../../../src/card/html/drawTrueSizes.js'
import { de } from '../../../src/v1/message/de.js'
import { en } from '../../../src/v1/message/en.js'
import { es } from '../../../src/v1/message/es.js'
import { fr } from '../../../src/v1/message/fr.js'

it.for(Object.entries({ de, en, es, fr }))(
  '%s: the text beside the line of 50 mm ends before the drawing does, so that its length is never cut off',
  ([, { wall }]) => {
    // 106 mm of bold type of 4.6 mm, 2.25 mm for each character; longer texts lost "50 mm" in Chromium.
    expect(`${wall.labels.checkLine} 50 mm`.length).toBeLessThanOrEqual(106 / 2.25)
  },
)

it('sets labels that need a third row closer, with the size of a hexagon on its own line', () => {
  const ring = { kind: 'ring', insideDiameter: 16, outsideDiameter: 20 } as const
  const hexagon = { kind: 'hexagon', acrossFlats: 10 } as const
  const draw = (seal: string, drive: string) =>
    drawTrueSizes(
      {
        kind: 'true sizes',
        checkLine: { millimetres: 50, label: '' },
        labels: 'below',
        shapes: [
          ...[1, 2, 3].map(() => ({ ...ring, labels: ['A', seal] })),
          ...[1, 2, 3, 4].map(() => ({ ...hexagon, labels: ['B', `${drive} 10 mm`] })),
        ],
      },
      '',
    ).html
  expect(draw('ring', 'hex key')).toContain('>hex key 10 mm<')
  expect(draw('arandela de sellado', 'hexágono interior')).toContain('>hexágono interior<')
  expect(draw('arandela de sellado', 'hexágono interior')).toContain('>10 mm<')
})
