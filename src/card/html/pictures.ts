import type { PictureName } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'

/** A line drawing: its view box, paths of thin and thick lines, and filled paths. */
interface Drawing {
  readonly box: string
  readonly thin?: string
  readonly thick?: string
  readonly filled?: string
}

const DRAWINGS: Readonly<Record<PictureName, Drawing>> = {
  washer: {
    box: '0 0 120 84',
    thick: 'M4 46H42V80M116 46H78V80M36 10H84V30H36ZM44 40V76H76V40',
    thin: 'M8 56L18 46M8 68L30 46M10 78L40 48M22 78L42 58M34 78L42 70M78 58L90 46M78 70L102 46M80 80L112 48M92 80L116 56M104 80L116 68M44 48L76 44M44 56L76 52M44 64L76 60M44 72L76 68M100 14L90 34M90 34L98 28M90 34L89 25',
    filled: 'M30 32H44V44H30ZM76 32H90V44H76ZM30 30H90V32H30Z',
  },
  'wheel marks': {
    box: '0 0 180 60',
    thick: 'M30 6A24 24 0 1 0 30.010 6ZM90 6A24 24 0 1 0 90.010 6ZM150 6A24 24 0 1 0 150.010 6Z',
    thin: 'M30 23A7 7 0 1 0 30.010 23ZM90 23A7 7 0 1 0 90.010 23ZM150 23A7 7 0 1 0 150.010 23Z',
    filled: 'M30 52L25 42H35ZM112 30L102 25V35ZM150 8L145 18H155Z',
  },
  pour: {
    box: '0 0 120 84',
    thick:
      'M14 6H54L38 28H30ZM32 28V34C32 62 50 66 74 62M38 28V34C38 54 52 60 74 56M72 50V68M80 44C96 40 112 48 114 62S106 82 90 82 70 76 74 68',
    thin: 'M19 12H49M23 18H45M80 70H112M82 75H109M64 20V52M64 20L60 27M64 20L68 27M64 52L60 45M64 52L68 45',
  },
}

/** A small drawing, with its meaning in words for screen readers. */
export function drawPicture(name: PictureName, meaning: string): Html {
  const { box, thin, thick, filled } = DRAWINGS[name]
  const roundEnds = { 'stroke-linejoin': 'round', 'stroke-linecap': 'round' }
  const drawStroke = (d: string | undefined, strokeWidth: string) =>
    d &&
    createElement('path', {
      d,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-width': strokeWidth,
      ...roundEnds,
    })
  return createElement(
    `svg.picture.${name.replace(' ', '-')}`,
    { viewBox: box, role: 'img', focusable: 'false' },
    createTag('title', meaning),
    drawStroke(thin, '1.25'),
    drawStroke(thick, '2.75'),
    filled && createElement('path', { d: filled, fill: 'currentColor' }),
  )
}

/** The safety alert symbol in front of a caution. */
export function drawCautionSign(): Html {
  const stroke = { stroke: 'currentColor', 'stroke-width': '2.2' }
  return createElement(
    'svg.sign-caution',
    { viewBox: '0 0 24 22', 'aria-hidden': 'true', focusable: 'false' },
    createElement('path', {
      d: 'M12 1.500L23 20.500H1Z',
      fill: 'none',
      ...stroke,
      'stroke-linejoin': 'round',
    }),
    createElement('path', { d: 'M12 8V14M12 16.500V18', ...stroke, 'stroke-width': '2.4' }),
  )
}
