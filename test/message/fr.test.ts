import fc from 'fast-check'
import { toCardinal } from 'n2words/fr-FR'
import { describe, expect, it } from 'vitest'
import { fr } from '../../src/message/fr/index.js'
import { renderMessage } from '../../src/message/index.js'
import { UNITS_BY_MEASURE, type Unit } from '../../src/quantity/unit.js'
import { law } from '../support/law.js'

const { numeral, quantity, name, band, range, duration } = fr.speech
const { steps, lines, card, cues } = fr

const show = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ')
const render = (code: string, params: object) => show(renderMessage({ code, params }, fr))

/** The text of a line for these actions. */
const lineOf = (...actions: readonly string[]) => {
  const line = lines.find((candidate) => candidate.actions.join() === actions.join())
  if (line === undefined) throw new Error(actions.join())
  return line
}

// n2words 4.0.0, MIT, writes numbers in words on its own; `fr-FR` counts seventy as sixty and ten.
describe('French numbers in words', () => {
  it('are those of n2words, up to a million', () => {
    law(300, fc.integer({ min: 0, max: 1_000_000 }), (value) => {
      expect(numeral(String(value))).toBe(toCardinal(value))
    })
  })

  it('are those of n2words with decimals', () => {
    law(
      200,
      fc.integer({ min: 0, max: 9_999 }),
      fc.integer({ min: 1, max: 9_999 }),
      fc.integer({ min: 0, max: 2 }),
      (whole, decimals, zeros) => {
        const digits = `${whole}.${'0'.repeat(zeros)}${String(decimals).replace(/0+$/, '')}`
        expect(numeral(digits)).toBe(toCardinal(digits))
      },
    )
  })

  // Typed by hand.
  it.each([
    ['21', 'vingt et un'],
    ['71', 'soixante et onze'],
    ['80', 'quatre-vingts'],
    ['81', 'quatre-vingt-un'],
    ['200', 'deux cents'],
    ['80000', 'quatre-vingt mille'],
    ['-8.90', 'moins huit virgule neuf'],
    ['−3', 'moins trois'],
    ['12.05', 'douze virgule zéro cinq'],
    ['10.0', 'dix'],
    ['1234567890', 'un deux trois quatre cinq six sept huit neuf zéro'],
    ['½', '½'],
  ])('%s is %s', (digits, words) => {
    expect(numeral(digits)).toBe(words)
  })

  it('reads names, bands and ranges', () => {
    expect(name('SAE 80W-90, API GL-5')).toBe('SAE quatre-vingts W quatre-vingt-dix, API GL cinq')
    expect(name('douille 10 mm')).toBe('douille dix millimètres')
    expect(name('clé 1/2 in')).toBe('clé un demi de pouce')
    expect(name('bracket 11/2')).toBe('bracket 11/2')
    expect(range('deux', 'trois')).toBe('deux à trois')
    expect(band({ kind: 'nominal', value: '450', asPrinted: '450 cc', unit: 'mL' })).toBe(
      'quatre cent cinquante centimètres cubes',
    )
    expect(band({ kind: 'nominal', value: '7.5', asPrinted: '7 1/2', unit: 'lbf.ft' })).toBe(
      'sept livres-pieds et demie',
    )
    expect(band({ kind: 'nominal', value: '0.5', asPrinted: '½', unit: 'L' })).toBe('un demi-litre')
    expect(band({ kind: 'nominal', value: '0.75', asPrinted: '3/4', unit: 'L' })).toBe(
      'trois quarts de litre',
    )
    expect(band({ kind: 'nominal with tolerance', value: '40', minus: '4', plus: '4', unit: 'N.m' })).toBe(
      'quarante plus ou moins quatre newtons-mètres',
    )
    expect(band({ kind: 'limits', min: '20', max: '25', unit: 'N.m' })).toBe(
      'vingt à vingt-cinq newtons-mètres',
    )
    expect(band({ kind: 'limits', max: '21', unit: 'h' })).toBe('au plus vingt et une heures')
  })

  it('says units in the singular below two, and with their gender', () => {
    expect(['0', '1', '1.5', '2'].map((digits) => quantity(digits, 'L'))).toEqual([
      'zéro litre',
      'un litre',
      'un virgule cinq litre',
      'deux litres',
    ])
    expect(quantity('1', 'h')).toBe('une heure')
    expect(quantity('21', 'min')).toBe('vingt et une minutes')
    expect(quantity('1000000', 'h')).toBe('un million d’heures')
    expect(duration(3725)).toBe('une heure deux minutes cinq secondes')
    expect(duration(0)).toBe('zéro seconde')
  })

  it('names every unit, with a plural', () => {
    const units = Object.values(UNITS_BY_MEASURE).flat() as readonly Unit[]
    expect(units.length).toBeGreaterThan(40)
    for (const unit of units) {
      expect(quantity('1', unit)).toMatch(/^une? [a-zéèà’ -]+$/i)
      expect(quantity('2', unit)).toMatch(/^deux [a-zéèà’ -]+s(?: |$|-)/i)
    }
  })
})

describe('French sentences', () => {
  it('join lists, count and write numbers as French does', () => {
    expect(fr.list(['a', 'b', 'c'])).toBe('a, b et c')
    expect(render('fill/no-containers', { short: { value: 1234.5, unit: 'L' } })).toBe(
      'Pas d’huile adaptée dans le stock. Se procurer 1234,5 L.',
    )
    expect([0, 1, 1.5, 1.9996, 2, 1_000_000, 1_000_001].map(fr.plural)).toEqual([
      'one',
      'one',
      'one',
      'other',
      'other',
      'many',
      'other',
    ])
    const turns = (value: number) =>
      render('torque/turns-too-few', { turns: value, min: '2' }).split(' : ')[0]
    expect([0, 1, 1.5, 2].map(turns)).toEqual(['0 tour', '1 tour', '1,5 tour', '2 tours'])
  })

  it('writes periods', () => {
    const none = { years: 0, months: 0, weeks: 0, days: 0 }
    expect(show(card.period({ ...none, months: 6 }))).toBe('6 mois')
    expect(show(card.period({ years: 1, months: 1, weeks: 2, days: 3 }))).toBe(
      '1 an, 1 mois, 2 semaines et 3 jours',
    )
    expect(show(card.period(none))).toBe('0 jour')
    expect(card.moreMissing(1)).toBe('et 1 autre, non indiqué ou non connu')
    expect(card.cannotTell(['année modèle', 'marché'])).toBe('non connu sans\u00a0: année modèle et marché')
  })

  it('gives seals their articles and genders', () => {
    expect(show(steps['fit new seal'].full({ part: 'fill plug', seal: 'o-ring' }))).toBe(
      'Monter un joint torique neuf sur « fill plug ».',
    )
    expect(show(steps['take off old seal'].full({ seal: 'crush washer' }))).toBe(
      'Retirer l’ancienne rondelle à écraser. Ne rien en laisser sur le carter. Si elle colle au bouchon ou au carter, la gratter. Ne pas rayer la face.',
    )
    expect(render('seal/replace-not-stated', { kind: 'gasket' })).toBe(
      'Le manuel ne dit pas quand remplacer le joint plat. Monter un joint plat neuf.',
    )
    expect(render('seal/sheet-says-on-condition', { kind: 'bonded seal' })).toBe(
      'Le manuel permet de réutiliser cette rondelle métal-caoutchouc en bon état. À contrôler.',
    )
    expect(
      show(
        cues.seals([
          { count: 1, kind: card.seals['crush washer'] },
          { count: 2, kind: card.seals['o-ring'] },
          { count: 3, kind: card.seals['liquid gasket'] },
        ]),
      ),
    ).toBe('Préparer ces joints : une rondelle à écraser, deux joints toriques et pâte à joint.')
  })

  it('writes steps in the infinitive, and names of the sheet in quotes', () => {
    const plug = { part: 'fill plug', instance: 'left', gearcase: 'hub reduction' }
    expect(show(steps['take out'].full(plug))).toBe('Déposer « fill plug » (left) de « hub reduction ».')
    expect(show(steps['take out'].short(plug))).toBe('fill plug (left) : déposer')
    expect(show(steps['clean around'].full({}))).toBe('Nettoyer le pourtour de l’ouverture.')
    expect(show(steps['inspect the magnet'].full({}))).toMatch(/^Examiner l’aimant du bouchon\. /)
    expect(show(steps['check the level'].full({}))).toBe('Contrôler le niveau d’huile à l’orifice de niveau.')
    expect(
      show(steps['crack loose'].full({ part: 'drain plug', beforeDraining: true, fluid: 'grease' })),
    ).toBe('Débloquer « drain plug ». En cas de blocage, laisser la graisse en place.')
    expect(
      show(steps.tighten.full({ part: 'drain plug', torque: '34 N·m', setting: '34 N·m', wrench: 'click' })),
    ).toBe('Régler la clé « click » à 34 N·m. Serrer « drain plug » à 34 N·m.')
    expect(show(steps['turn the wheel'].full({ wheelMark: 'mark level', instance: 'left' }))).toBe(
      'Tourner la roue (left) jusqu’à ce que son repère soit à hauteur du moyeu. Si un frein ou un rapport la retient, le libérer selon le manuel, l’autre essieu étant calé.',
    )
    expect(show(steps['tighten cover'].short({ part: 'rear cover', torque: '25 N·m' }))).toBe(
      'rear cover, vis : serrer',
    )
  })

  it('joins steps in one line', () => {
    const { full, short } = lineOf('clean around', 'crack loose', 'nip by hand')
    const plug = { part: 'fill plug', beforeDraining: true, socket: '22 mm socket' } as const
    expect(
      show(
        full({ do: 'clean around', ...plug }, { do: 'crack loose', ...plug }, { do: 'nip by hand' }) ?? '',
      ),
    ).toBe(
      'Nettoyer le pourtour de « fill plug », débloquer avec « 22 mm socket » et revisser à la main. En cas de blocage, laisser l’huile en place.',
    )
    expect(show(short({ do: 'clean around', ...plug }, { do: 'crack loose', ...plug }) ?? '')).toBe(
      'fill plug : nettoyer, débloquer, revisser à la main ; si bloqué, laisser l’huile',
    )
  })

  // Typed by hand.
  it.each([
    ['service/hand-tools', { tools: ['chocks', 'jack'] }, 'Outils à main : cales et cric.'],
    ['service/supply', { supply: 'rags' }, 'Chiffons.'],
    [
      'service/figure-not-stated',
      { part: { path: '', gearcase: 'front', part: 'fill plug' }, role: 'tightening' },
      'Front : fill plug : valeur non indiquée (couple). Voir le manuel.',
    ],
    [
      'service/socket-missing',
      { part: { path: '', part: 'plug' }, drive: 'internal hex', size: '8 mm' },
      'L’outillage n’a pas d’outil pour cette empreinte : six pans creux 8 mm (plug).',
    ],
    [
      'interval/by-event',
      { event: 'submersion', date: '2031-05-01' },
      'à faire : immersion le 2031-05-01. Entretien avant réutilisation.',
    ],
    [
      'interval/reading-missing',
      { meter: 'hours' },
      'Pas de relevé du compteur horaire. Relever le compteur et noter la valeur.',
    ],
    [
      'interval/fractional-period',
      { period: 'P1Y6M', factor: '0.5' },
      '1 an et 6 mois × 0,5 n’est pas un nombre entier de mois ou de jours ; limite non connue.',
    ],
    [
      'torque/actual-torque-in-band',
      {
        trueBand: { min: { value: 29.8, unit: 'N.m' }, max: { value: 32.3, unit: 'N.m' } },
        band: { min: { value: '28', unit: 'N.m' }, max: { value: '34', unit: 'N.m' } },
        percent: 4,
        of: 'full scale',
      },
      'Avec ±4 % de la pleine échelle, le couple réel est de 29,8 N·m à 32,3 N·m, dans la plage 28 N·m à 34 N·m.',
    ],
    [
      'quantity/unit-of-other-measure',
      { unit: 'N.m', measure: 'volume' },
      'N·m n’est pas une unité de la grandeur attendue : volume.',
    ],
    [
      'spec/wrong-kind',
      { found: 'sheat', expected: ['spec-sheet', 'stock'], didYouMean: 'spec-sheet' },
      'Type de document attendu : « spec-sheet » ou « stock » ; trouvé « sheat ». S’agit-il de « spec-sheet » ?',
    ],
    [
      'spec/bad-notation',
      { text: '', range: [0, 0], found: '', expected: ['torque', 'turns'] },
      'Attendu : un couple tel que "30 N·m" ou des tours tels que "1 to 1.5 turns" ; il n’y a rien.',
    ],
    [
      'procedure/caution-lifting',
      { signal: 'warning' },
      'AVERTISSEMENT : Une machine levée peut tomber et tuer. Rester à l’écart pendant que le cric bouge ; ne jamais travailler sous un cric.',
    ],
    [
      'procedure/wrong-part',
      { step: 'a', action: 'take out', required: ['opening', 'machine'] },
      'Étape « a » : « take out » s’applique à : une ouverture ou toute la machine (sans « on »). Corriger « on ».',
    ],
    [
      'record/level-not-right',
      { gearcase: 'front', level: 'above' },
      'front : niveau au-dessus du repère. Le corriger avant le travail de la machine.',
    ],
    [
      'record/seal-not-new',
      { part: 'drain plug', seal: 'crush washer', usedAgain: true },
      'drain plug : la rondelle à écraser : réutilisation notée. À chaque ouverture, il faut du neuf ; monter une rondelle à écraser neuve.',
    ],
    [
      'oil/viscosities-missing',
      { missing: ['kv40', 'kv100'] },
      'La viscosité à 40 °C et à 100 °C n’est pas connue. Voir la fiche du produit.',
    ],
    [
      'thread/plug-not-in-table',
      { thread: 'M18x1.5', housing: 'cast iron' },
      'Aucun couple publié n’est connu pour un bouchon M18x1.5 (carter : fonte) ; le couple n’est pas comparé.',
    ],
    [
      'seal/material-suitable',
      {
        material: 'NBR',
        medium: 'hypoid EP oil',
        min: { value: -30, unit: 'degC' },
        max: { value: 100, unit: 'degC' },
      },
      'NBR résiste à l’huile hypoïde EP de −30 °C à 100 °C.',
    ],
    [
      'fill/refill-level-decides',
      { difference: { value: -0.09, unit: 'L' }, method: 'dipstick' },
      'C’est la jauge qui décide ; rempli : 0,09 L de moins que la quantité indiquée.',
    ],
  ])('%s', (code, params, text) => {
    expect(render(code, params)).toBe(text)
  })
})

/** Every string of the catalogue that no function writes. */
function listWords(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(listWords)
}

it('sets spaces before signs as French does, and no digit on cards', () => {
  const { language: _language, ...rest } = fr
  const words = listWords(rest)
  expect(words.length).toBeGreaterThan(400)
  // An ordinary space before a sign would let the sign begin a line.
  expect(words.filter((word) => / [:;!?»]|« |[^\u202f][!?](?:$| )/.test(word))).toEqual([])
  expect(words.filter((word) => word.includes("'"))).toEqual([])
  expect(listWords([card, fr.wall, fr.slip, fr.papers, cues]).filter((word) => /[0-9]/.test(word))).toEqual(
    [],
  )
})
