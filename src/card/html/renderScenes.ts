import type { CardModel, CardScene, CardScenes } from '../cardParts.js'
import { createElement, createTag, type Html } from './createElement.js'
import { renderCaution, renderLine } from './renderLine.js'

/** The scenes of a cue sheet: one row per scene, with what to show, to say and to have on the screen. */
export function renderScenes({ columns, scenes }: CardScenes, cardMarks: CardModel['marks']): Html {
  const renderColumn = (name: keyof CardScenes['columns'], ...content: readonly Html[]) =>
    createTag(`div.${name}`, createTag('p.label', columns[name]), ...content)
  const renderScene = ({ number, title, time, shots, say, screen, hold }: CardScene): Html => {
    const held = hold.map((caution) => createTag('li', renderCaution(caution, cardMarks)))
    return createTag(
      'article.scene',
      createTag(
        'div.scene-head',
        createTag('h3', createTag('span.number', `${number}.`), ' ', renderLine(title)),
        createTag('p.time', time),
      ),
      renderColumn(
        'show',
        createElement(
          'ol',
          { role: 'list' },
          shots.map(({ text, marks }) =>
            createTag(
              'li',
              text,
              marks.map((mark) => createTag('strong.mark', mark)),
            ),
          ),
        ),
      ),
      renderColumn(
        'say',
        ...say.map(({ text, isCaution }) => createTag(isCaution ? 'p.spoken-caution' : 'p', text)),
      ),
      createTag(
        'div.shown',
        renderColumn(
          'screen',
          createElement(
            'ul',
            { role: 'list' },
            screen.map((line) => createTag('li', renderLine(line))),
          ),
        ),
        held.length === 0 ? undefined : renderColumn('hold', createElement('ul', { role: 'list' }, held)),
      ),
    )
  }
  return createTag('div.scenes', scenes.map(renderScene))
}
