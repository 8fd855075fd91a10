import { help } from 'virtual:help'
import {
  autocompletion,
  type Completion,
  type CompletionContext,
  type CompletionResult,
  completionKeymap,
  insertCompletionText,
} from '@codemirror/autocomplete'
import { defaultKeymap, history, historyKeymap } from '@codemirror/commands'
import { lintKeymap, setDiagnostics } from '@codemirror/lint'
import { Compartment, EditorSelection, EditorState, type StateCommand } from '@codemirror/state'
import {
  Decoration,
  drawSelection,
  EditorView,
  hoverTooltip,
  keymap,
  lineNumbers,
  MatchDecorator,
  type TooltipView,
  ViewPlugin,
} from '@codemirror/view'
import type { PageLabels } from './labels/labels.js'
import { listKeys, pathAtCursor } from './pathAtCursor.js'
import { TEXT_NAMES, type TextFinding, type TextName, type Texts } from './readTexts.js'
import { findNode, listExamples, type Suggestion, suggestKeys, suggestValues } from './schemaHelp.js'

export interface Editor {
  readonly show: (name: TextName) => void
  readonly setTexts: (texts: Texts) => void
  readonly setFindings: (findings: readonly TextFinding[]) => void
  readonly select: (from: number, to: number) => void
  readonly setLabels: (labels: PageLabels) => void
}

export interface EditorOptions {
  readonly texts: Texts
  readonly name: TextName
  readonly labels: PageLabels
  readonly selection: { readonly from: number; readonly to: number }
  readonly onChange: (name: TextName, text: string) => void
  /** Called with the meaning of the key at the cursor. */
  readonly onMeaning: (text: string) => void
}

/** Makes the editor in a shadow root, where its styles need no exception from the page's content policy. */
export function createEditor(host: HTMLElement, options: EditorOptions): Editor {
  const root = host.attachShadow({ mode: 'open' })
  let shown = options.name
  let findings: readonly TextFinding[] = []
  let { labels } = options
  const words = new Compartment()
  const makeState = (name: TextName, text: string): EditorState =>
    EditorState.create({
      doc: text,
      extensions: [words.of(listWords(name, labels)), listExtensions(name, options, () => labels)],
    })
  const states = new Map(TEXT_NAMES.map((name) => [name, makeState(name, options.texts[name])]))
  const stateOf = (name: TextName): EditorState => states.get(name) ?? makeState(name, '')
  const view = new EditorView({ state: stateOf(shown), parent: root, root })
  const markFindings = (): void => {
    const marked = findings.filter(({ name }) => name === shown)
    view.dispatch(
      setDiagnostics(
        view.state,
        marked.map((finding) => toDiagnostic(finding, view.state.doc.length, labels)),
      ),
    )
  }
  view.dispatch({ selection: { anchor: options.selection.from, head: options.selection.to } })
  return {
    show: (name) => {
      states.set(shown, view.state)
      shown = name
      view.setState(stateOf(name))
      markFindings()
    },
    setTexts: (texts) => {
      for (const name of TEXT_NAMES) states.set(name, makeState(name, texts[name]))
      view.setState(stateOf(shown))
      view.scrollDOM.scrollTop = 0
      options.onMeaning('')
    },
    setFindings: (next) => {
      findings = next
      markFindings()
    },
    setLabels: (next) => {
      labels = next
      const relabel = (name: TextName, state: EditorState) =>
        state.update({ effects: words.reconfigure(listWords(name, labels)) }).state
      for (const name of TEXT_NAMES)
        states.set(name, relabel(name, name === shown ? view.state : stateOf(name)))
      view.setState(stateOf(shown))
    },
    select: (from, to) => {
      const length = view.state.doc.length
      const [anchor, head] = [Math.min(from, length), Math.min(to, length)]
      view.dispatch({
        selection: { anchor, head },
        effects: EditorView.scrollIntoView(anchor, { y: 'center' }),
      })
      view.focus()
    },
  }
}

/** What names the field and its lists to a screen reader. */
const listWords = (name: TextName, { fields, phrases }: PageLabels) => [
  EditorState.phrases.of(phrases),
  EditorView.contentAttributes.of({ 'aria-label': fields[name] }),
]

function listExtensions(name: TextName, { onChange, onMeaning }: EditorOptions, labelsNow: () => PageLabels) {
  return [
    lineNumbers(),
    history(),
    drawSelection(),
    colours,
    autocompletion({ override: [(context) => complete(name, context, labelsNow())], icons: false }),
    hoverTooltip((view, position) => explainKey(name, view.state.doc.toString(), position, labelsNow())),
    keymap.of([
      { key: 'Enter', run: breakLine },
      ...completionKeymap,
      ...historyKeymap,
      ...lintKeymap,
      ...defaultKeymap,
    ]),
    EditorView.domEventHandlers({ beforeinput: typeOverSelection }),
    EditorView.contentAttributes.of({ autocapitalize: 'off', tabindex: '0' }),
    EditorView.updateListener.of(({ docChanged, selectionSet, state }) => {
      const text = docChanged || selectionSet ? state.doc.toString() : ''
      if (docChanged) onChange(name, text)
      if (docChanged || selectionSet) onMeaning(describeKey(name, text, state.selection.main.head))
    }),
    theme,
  ]
}

/** A new line with the indentation of this one, two spaces more after a key without a value. */
const breakLine: StateCommand = ({ state, dispatch }) => {
  const changes = state.changeByRange(({ from, to }) => {
    const before = state.doc.lineAt(from).text.slice(0, from - state.doc.lineAt(from).from)
    const indent = /^\s*/.exec(before)?.[0] ?? ''
    const insert = `\n${indent}${/:\s*$/.test(before) ? '  ' : ''}`
    return { changes: { from, to, insert }, range: EditorSelection.cursor(from + insert.length) }
  })
  dispatch(state.update(changes, { scrollIntoView: true, userEvent: 'input' }))
  return true
}

/** Typing over a selection: the browser would write elements with styles, which the content policy refuses. */
function typeOverSelection({ inputType, data }: InputEvent, view: EditorView): boolean {
  if (inputType !== 'insertText' || data === null || view.composing || view.state.selection.main.empty)
    return false
  view.dispatch(view.state.replaceSelection(data), { userEvent: 'input.type' })
  return true
}

function complete(name: TextName, context: CompletionContext, labels: PageLabels): CompletionResult | null {
  const text = context.state.doc.toString()
  const place = pathAtCursor(text, context.pos)
  if (!context.explicit && place.word === '' && place.at === 'key') return null
  const from = context.pos - place.word.length
  if (place.at === 'key') {
    const parent = place.path.join('/')
    const written = listKeys(text).filter(
      ({ path, to }) => path.slice(0, -1).join('/') === parent && to !== context.pos,
    )
    const keys = suggestKeys(help[name], place.path, new Set(written.map(({ path }) => path.at(-1) ?? '')))
    const options = keys.map(
      (key, index): Completion => ({
        label: key.label,
        type: 'property',
        boost: -index,
        info: () => describe(key, labels),
        apply: (view, _completion, start, end) => {
          const hasColon = /^\s*:/.test(view.state.sliceDoc(end, end + 9))
          const indent = ' '.repeat(place.column + 2)
          const rest =
            place.isFlow || key.opens === 'text' ? ': ' : `:\n${indent}${key.opens === 'list' ? '- ' : ''}`
          view.dispatch(insertCompletionText(view.state, key.label + (hasColon ? '' : rest), start, end))
        },
      }),
    )
    return options.length === 0 ? null : { from, options, validFor: /^[\w-]*$/ }
  }
  const options = suggestValues(help[name], place.path).map(
    (value, index): Completion => ({
      label: value.label,
      type: 'text',
      boost: -index,
      info: () => describe(value, labels),
      apply: place.isFlow || /^[\d.]+$/.test(value.label) ? quote(value.label) : value.label,
    }),
  )
  return options.length === 0 ? null : { from, options, validFor: /^[^\n]*$/ }
}

/** A comma would end a plain text in braces, and a plain figure would be a number. */
const quote = (text: string): string =>
  /^[\w -]*$/.test(text) && /[a-z]/i.test(text) ? text : JSON.stringify(text)

/** The schemas describe their keys in English. */
function describe(
  { about, examples }: Pick<Suggestion, 'about' | 'examples'>,
  labels: PageLabels,
): HTMLElement {
  const box = document.createElement('div')
  box.className = 'meaning'
  box.lang = 'en'
  const lines = [about, ...examples.map(labels.example)].filter((line) => line !== '')
  for (const line of lines) box.append(Object.assign(document.createElement('p'), { textContent: line }))
  return box
}

function explainKey(name: TextName, text: string, position: number, labels: PageLabels) {
  const key = listKeys(text).find(({ from, to }) => from <= position && position <= to)
  const node = key && findNode(help[name], key.path)
  if (key === undefined || node?.about === undefined) return null
  const { about } = node
  return {
    pos: key.from,
    end: key.to,
    above: true,
    create: (): TooltipView => ({ dom: describe({ about, examples: listExamples(node) }, labels) }),
  }
}

/** The meaning of the key at the cursor or, for a value, of its key. */
function describeKey(name: TextName, text: string, position: number): string {
  const key = listKeys(text).find(({ from, to }) => from <= position && position <= to)
  const path = key?.path ?? pathAtCursor(text, position).path
  const about = findNode(help[name], path)?.about
  const last = path.findLast((token) => !/^\d+$/.test(token))
  return about === undefined || last === undefined ? '' : `${last}: ${about}`
}

function toDiagnostic(
  { from, to, severity, message, fixes }: TextFinding,
  length: number,
  labels: PageLabels,
) {
  const [start, end] = [Math.min(from, length), Math.min(to, length)]
  const advice = fixes.length === 0 ? '' : ` ${labels.advice(fixes)}`
  return { from: start, to: Math.max(end, start), severity, message: message + advice }
}

const KEY_MARK = Decoration.mark({ class: 'key' })
const NOTE_MARK = Decoration.mark({ class: 'note' })

const matcher = new MatchDecorator({
  regexp:
    /(?:^|[\s{[,])(#.*)|(?<=^\s*(?:- +)*|[{,]\s*)("[^"\n]*"|[^\s#"'{}[\],:-][^#{}[\],:\n]*)(?=:(?:\s|$))/g,
  decorate: (add, from, to, [whole, note]) => {
    if (note === undefined) add(from, to, KEY_MARK)
    else add(from + (whole.length - note.length), to, NOTE_MARK)
  },
})

const colours = ViewPlugin.define(
  (view) => ({
    decorations: matcher.createDeco(view),
    update(update) {
      this.decorations = matcher.updateDeco(update, this.decorations)
    },
  }),
  { decorations: ({ decorations }) => decorations },
)

/** The colours of the page come through its custom properties. */
const theme = EditorView.theme({
  '&': { height: '100%', fontSize: '0.95rem', color: 'var(--ink)', backgroundColor: 'var(--panel)' },
  '&.cm-focused': { outline: '0.2rem solid var(--accent)', outlineOffset: '-0.2rem' },
  '.cm-scroller': { fontFamily: 'ui-monospace, "DejaVu Sans Mono", monospace', lineHeight: '1.5' },
  '.cm-content': { caretColor: 'var(--ink)', padding: '0.5rem 0' },
  '.cm-cursor': { borderLeft: '0.15rem solid var(--ink)' },
  '.cm-gutters': {
    backgroundColor: 'var(--panel)',
    color: 'var(--soft)',
    borderRight: '1px solid var(--line)',
  },
  '.cm-selectionBackground, &.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground': {
    backgroundColor: 'var(--mark)',
  },
  '.key': { color: 'var(--accent)' },
  '.note': { color: 'var(--soft)', fontStyle: 'italic' },
  '.cm-tooltip': {
    maxWidth: 'min(30rem, 90vw)',
    backgroundColor: 'var(--panel)',
    color: 'var(--ink)',
    border: '1px solid var(--soft)',
    borderRadius: '0.3rem',
  },
  '.cm-tooltip.cm-tooltip-autocomplete > ul': { fontFamily: 'inherit', maxHeight: '14rem' },
  '.cm-tooltip.cm-tooltip-autocomplete > ul > li': { padding: '0.25rem 0.5rem', lineHeight: '1.4' },
  '.cm-tooltip-autocomplete ul li[aria-selected]': {
    backgroundColor: 'var(--accent)',
    color: 'var(--on-accent)',
  },
  '.cm-completionMatchedText': { fontWeight: '700', textDecoration: 'none' },
  '.cm-completionInfo, .meaning': { fontFamily: 'system-ui, "Liberation Sans", sans-serif' },
  '.meaning': { padding: '0.4rem 0.6rem' },
  '.meaning p': { margin: '0 0 0.2rem' },
  '.cm-diagnostic': { fontFamily: 'system-ui, "Liberation Sans", sans-serif', padding: '0.4rem 0.6rem' },
})
