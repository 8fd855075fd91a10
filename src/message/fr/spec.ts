import type { ExpectedJson, NotPlainData, SpecCodes, TypeName } from '../../spec/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize, join, nameOf, writeUnitName } from '../phrases.js'
import { cardWords } from './card.js'
import { describeNotation } from './notation.js'
import { joinQuoted, quote, writeFactName } from './words.js'

const TYPE_NAMES: Readonly<Record<TypeName, string>> = {
  object: 'un objet',
  list: 'une liste',
  text: 'un texte',
  number: 'un nombre',
  'whole-number': 'un nombre entier',
  'true-or-false': 'true ou false',
  null: 'null',
}

/** Reasons why a line of a history cannot be used. */
const HISTORY_PROBLEMS: Readonly<Record<SpecCodes['spec/history-line-unreadable']['problem'], string>> = {
  'not-json': 'ce n’est pas du JSON valide',
  'repeated-key': 'une clé apparaît deux fois',
  'too-deep': 'l’imbrication est trop profonde',
  'not-an-addition': 'attendu : {"op":"add","path":…,"value":…}',
  'no-such-place': 'le carnet n’a pas ce chemin, ou il ne doit pas changer',
  'not-at-the-end': 'on n’ajoute qu’à la fin d’une liste : le chemin doit finir par /-',
  'replaces-a-part': 'elle remplacerait des données ; chaque ligne ajoute un élément à une liste',
}

const JSON_NEEDS: Readonly<Record<ExpectedJson, string>> = {
  value: 'une valeur est attendue',
  key: 'une clé entre guillemets droits est attendue (pas de virgule avant une accolade fermante)',
  colon: 'un deux-points est attendu',
  'comma-or-brace': 'une virgule ou une accolade fermante est attendue',
  'comma-or-bracket': 'une virgule ou un crochet fermant est attendu',
  end: 'la fin du texte est attendue',
  'closing-quote': 'le guillemet fermant manque',
  escape: 'séquence d’échappement inconnue ; doubler la barre oblique inverse',
  'no-control-character':
    'une fin de ligne, une tabulation ou un autre caractère de contrôle entre guillemets s’écrit comme séquence d’échappement',
}

const NOT_PLAIN_NAMES: Readonly<Record<NotPlainData, string>> = {
  undefined: 'une valeur non définie ; omettre plutôt la clé',
  function: 'une fonction',
  symbol: 'un symbole',
  bigint: 'un BigInt ; écrire un nombre',
  'not-finite': 'un nombre non fini',
  cycle: 'un objet qui se contient lui-même',
  'sparse-list': 'une liste à trous',
  'list-with-keys': 'une liste avec des clés',
  accessor: 'un accesseur ; donner la valeur',
  'hidden-property': 'une propriété non énumérable',
  'symbol-key': 'un symbole comme clé',
  'class-instance': 'une instance de classe ; donner un objet simple',
  unreadable: 'un objet illisible',
}

const joinWithOr = (items: readonly string[]): string => join(items, 'ou')
const writeSuggestion = (didYouMean: string | undefined): string =>
  didYouMean === undefined ? '' : ` S’agit-il de ${quote(didYouMean)} ?`
const writeRange = (from: number | string | undefined, to: number | string | undefined): string =>
  from === undefined ? `jusqu’à ${to}` : to === undefined ? `à partir de ${from}` : `${from} à ${to}`

export const specTexts: Texts<SpecCodes> = {
  'spec/variant-stated': ({ variant }) => `Le carnet cite la variante ${quote(variant)}.`,
  'spec/variant-selected': ({ variant }) =>
    `La variante ${quote(variant)} est la seule dont la condition est remplie.`,
  'spec/variant-only': ({ variant }) => `La variante ${quote(variant)} est la seule de la fiche technique.`,
  'spec/variant-not-known': ({ candidates }) =>
    candidates.length === 0
      ? 'La fiche technique n’a pas de variantes.'
      : `La variante n’est pas connue : ${joinQuoted(candidates)}. La noter dans le carnet.`,
  'spec/variant-not-on-sheet': ({ variant, known }) =>
    `Le carnet cite la variante ${quote(variant)}, qui n’est pas dans la fiche technique${known.length === 0 ? '' : ` (${joinQuoted(known, 'et')})`}. Vérifier la fiche et le carnet.`,
  'spec/variant-contradicted': ({ variant, candidates }) =>
    `Le carnet cite la variante ${quote(variant)}, mais les autres données de la machine l’excluent${candidates.length === 0 ? '' : ` ; elles conviennent à ${joinQuoted(candidates, 'et')}`}. Vérifier la plaque de la machine.`,
  'spec/variant-none-fits': ({ known }) =>
    `Aucune variante de la fiche technique ne convient à cette machine ; la fiche a ${joinQuoted(known, 'et')}. Vérifier le numéro de série, ou trouver la fiche qui le couvre.`,
  'spec/variant-without-condition': ({ variant }) =>
    `La fiche technique ne donne pas de condition pour la variante ${quote(variant)} ; le carnet doit la citer.`,
  'spec/fact-missing': ({ fact }) => `Donnée non connue : ${writeFactName(fact)}. La noter dans le carnet.`,
  'spec/variant-listed': ({ variants, listed }) =>
    `Vaut pour ${joinQuoted(listed, 'et')} ; cette machine : ${joinQuoted(variants, 'et')}.`,
  'spec/variant-not-listed': ({ variants, listed }) =>
    listed.length === 0
      ? 'Ne vaut pour aucune variante : la liste est vide.'
      : `Ne vaut que pour ${joinQuoted(listed, 'et')} ; cette machine : ${joinQuoted(variants, 'et')}.`,
  'spec/model-year-in-range': ({ modelYear, from, to }) =>
    `L’année modèle ${modelYear} est dans la plage ${writeRange(from, to)}.`,
  'spec/model-year-out-of-range': ({ modelYear, from, to }) =>
    `L’année modèle ${modelYear} est hors de la plage ${writeRange(from, to)}.`,
  'spec/serial-in-range': ({ serial, prefix, from, to }) =>
    `Le numéro de série ${serial} est dans la plage ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-out-of-range': ({ serial, prefix, from, to }) =>
    `Le numéro de série ${serial} est hors de la plage ${writeSerialRange(prefix, from, to)}.`,
  'spec/serial-form-differs': ({ serial, prefix, width }, say) =>
    `Le numéro de série ${quote(serial)} n’a pas la forme de la plage : ${prefix === '' ? '' : `${quote(prefix)}, puis `}${width === undefined ? 'un nombre' : `un nombre de ${say.count(width, 'chiffre', 'chiffres')}`}. Vérifier la plaque.`,
  'spec/serial-range-unreadable': ({ prefix, from, to }) =>
    `La plage de série ${writeSerialRange(prefix, from, to)} est inutilisable : les deux bouts doivent être des nombres avec autant de chiffres.`,
  'spec/market-listed': ({ market, listed }) =>
    `Vaut pour le marché ${joinQuoted(listed, 'et')} ; cette machine : ${quote(market)}.`,
  'spec/market-not-listed': ({ market, listed }) =>
    listed.length === 0
      ? 'Ne vaut pour aucun marché : la liste est vide.'
      : `Ne vaut que pour le marché ${joinQuoted(listed, 'et')} ; cette machine : ${quote(market)}.`,
  'spec/market-case-differs': ({ market, listed }) =>
    `Le marché ${quote(market)} ne diffère de ${joinQuoted(listed, 'et')} que par les majuscules. Écrire les deux de la même façon.`,
  'spec/part-on-every-machine': () => 'Toutes les machines de cette fiche ont cette pièce.',
  'spec/part-on-some-machines': () => 'Seules certaines machines de cette fiche ont cette pièce.',
  'spec/leaf-from-sheet': () => 'La fiche technique donne cette valeur directement.',
  'spec/leaf-absent': () => 'La fiche technique ne donne pas cette valeur.',
  'spec/override-applies': () => 'Une exception de la fiche technique vaut pour cette machine.',
  'spec/override-may-apply': () => 'Une exception de la fiche technique vaut peut-être pour cette machine.',
  'spec/override-does-not-fit': () =>
    'Une exception de la fiche technique renvoie ici, mais sa valeur est d’une autre sorte, ou elle renvoie à une partie de valeur. Corriger la fiche technique.',
  'spec/overrides-overlap': ({ overrides }, say) =>
    `${say.count(overrides.length, 'exception', 'exceptions')} de la fiche technique valent ici à la fois. Corriger la fiche pour qu’une seule vaille.`,
  'spec/candidates-agree': ({ candidates }, say) =>
    `${say.count(candidates.length, 'valeur possible', 'valeurs possibles')} ; toutes sont égales.`,
  'spec/not-yaml': ({ line, column, problem }) =>
    `YAML non valide : ligne ${line}, colonne ${column} : ${problem}`,
  'spec/yaml-comma-in-braces': ({ text }) =>
    `YAML lit ${quote(text)} comme une clé : entre accolades, une virgule finit un texte. Mettre entre guillemets les textes à virgule.`,
  'spec/yaml-comment-in-text': ({ text, comment }) =>
    `YAML ne lit que ${quote(text)}, et ${quote(`#${comment}`)} comme un commentaire. Mettre le texte entre guillemets, ou une espace après #.`,
  'spec/yaml-key-is-boolean': ({ key }) =>
    `YAML lit cette clé comme ${key}, pas comme un mot. La mettre entre guillemets.`,
  'spec/yaml-too-large': ({ limit }, say) =>
    `Ce YAML a plus de ${say.number(limit)} mots, signes et fins de ligne. L’écrire en JSON, ou le diviser.`,
  'spec/not-json': ({ line, column, needs }) =>
    `JSON non valide : ligne ${line}, colonne ${column} : ${JSON_NEEDS[needs]}.`,
  'spec/table-instead-of-document': ({ columns }) =>
    `C’est un tableau (CSV) avec les colonnes ${joinQuoted(columns, 'et')}, pas un document. Écrire un document en JSON ou YAML. Pour un parc, donner chaque rangée comme une ligne de JSON à « due - ».`,
  'spec/history-line-unreadable': ({ line, problem }) =>
    `La ligne ${line} de l’historique est inutilisable : ${HISTORY_PROBLEMS[problem]}.`,
  'spec/history-cut-off': ({ line }) =>
    `La ligne ${line}, la dernière de l’historique, est coupée et n’a pas été lue. L’effacer et l’ajouter de nouveau.`,
  'spec/duplicate-key': ({ key }) =>
    `Clé en double ${quote(key)}. Seule la dernière serait lue : effacer la mauvaise.`,
  'spec/not-plain-data': ({ found }) => `Pas des données JSON : trouvé ${NOT_PLAIN_NAMES[found]}.`,
  'spec/forbidden-key': ({ key }) =>
    `La clé ${quote(key)} n’est pas permise dans un document. En choisir une autre.`,
  'spec/too-deep': ({ limit }, say) =>
    `Les listes et objets sont imbriqués sur plus de ${say.count(limit, 'niveau', 'niveaux')}.`,
  'spec/too-long': ({ length, limit }, say) =>
    `Ce texte a ${say.number(length)} caractères ; la limite est de ${say.number(limit)}.`,
  'spec/too-large': ({ limit }, say) =>
    `Il y a plus de ${say.number(limit)} valeurs ou clés. Diviser le document.`,
  'spec/more-mistakes': ({ shown }, say) =>
    `Ce document a plus de ${say.count(shown, 'erreur', 'erreurs')} ; les autres ne sont pas affichées.`,
  'spec/wrong-kind': ({ found, expected, didYouMean }) =>
    `Type de document attendu : ${joinQuoted(expected)} ; trouvé ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/wrong-version': ({ found, readable, quotes }) =>
    quotes
      ? `La version est attendue comme texte : écrire "${readable[0] ?? ''}", entre guillemets droits.`
      : `Version attendue : ${joinWithOr(readable)} ; trouvé ${found}.`,
  'spec/missing-key': ({ key, allowed }) =>
    `Clé manquante ${quote(key)}${allowed === undefined ? '' : ` (${joinQuoted(allowed)})`}.`,
  'spec/unknown-key': ({ key, known, didYouMean }) =>
    `Clé inconnue ${quote(key)}.${didYouMean === undefined ? (known.length === 0 ? '' : ` Connues : ${join(known, 'et')}.`) : writeSuggestion(didYouMean)}`,
  'spec/wrong-type': ({ expected, found, value }) =>
    `Attendu : ${TYPE_NAMES[expected]} ; trouvé : ${TYPE_NAMES[found]}${value === undefined ? '' : ` (${value})`}.`,
  'spec/not-in-list': ({ found, allowed, didYouMean }) =>
    `Attendu : ${joinQuoted(allowed)} ; trouvé ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-figure': ({ found }) =>
    `Une valeur en chiffres est attendue, trouvé ${quote(found)}. Écrire les chiffres comme imprimés, avec un point décimal : jusqu’à neuf chiffres avant et six après. Une fraction va dans "asPrinted".`,
  'spec/interval-too-long': ({ found }) =>
    `L’intervalle ${found} est invraisemblable : au plus six chiffres avant le point décimal.`,
  'spec/comma-decimal': ({ found, didYouMean }) =>
    didYouMean === undefined
      ? `La valeur ${quote(found)} a une virgule, qui peut marquer les décimales ou les milliers. Écrire un point décimal, sans séparateur de milliers.`
      : `La valeur ${quote(found)} a une virgule décimale. Écrire ${quote(didYouMean)}.`,
  'spec/figure-without-quotes': ({ found }, say) =>
    `Une valeur entre guillemets est attendue, trouvé le nombre ${say.number(found, 15)}, qui perd les zéros imprimés. L’écrire comme imprimée.`,
  'spec/bad-id': ({ found, didYouMean }) =>
    `Un id est attendu (lettres minuscules, chiffres et traits d’union, une lettre d’abord, au plus 64 caractères), trouvé ${quote(found)}.${writeSuggestion(didYouMean)}`,
  'spec/bad-date': ({ found }) => `Une date telle que 2031-03-09 est attendue, trouvé ${quote(found)}.`,
  'spec/bad-period': ({ found }) =>
    `Une durée en années, mois, semaines ou jours entiers est attendue, par exemple P1Y, P6M, P2W ou P10D, trouvé ${quote(found)}.`,
  'spec/bad-pointer': ({ found }) =>
    `Un pointeur JSON est attendu, trouvé ${quote(found)}. Commencer chaque clé par / ; dans une clé, écrire ~1 pour / et ~0 pour ~.`,
  'spec/bad-currency': ({ found }) =>
    `Un code de monnaie de trois majuscules est attendu, par exemple EUR, trouvé ${quote(found)}.`,
  'spec/bad-sha256': ({ found }) =>
    `Un SHA-256 de 64 chiffres et lettres a à f est attendu, trouvé ${quote(found)}.`,
  'spec/empty-text': ({ key }) =>
    `Texte vide à ${quote(key)}. Le remplir, ou omettre la clé si elle est facultative.`,
  'spec/empty-list': ({ key }) => `Liste vide à ${quote(key)} ; il faut au moins une entrée.`,
  'spec/bad-notation': describeNotation,
  'spec/number-too-small': ({ found, limit, inclusive }, say) =>
    `Attendu : ${inclusive ? `${say.number(limit)} ou plus` : `plus de ${say.number(limit)}`} ; trouvé ${say.number(found, 15)}.`,
  'spec/number-too-large': ({ found, limit }, say) =>
    `Attendu : ${say.number(limit)} ou moins ; trouvé ${say.number(found, 15)}.`,
  'spec/interval-empty': () =>
    'Intervalle vide : l’entretien ne serait jamais à faire. Donner des heures, une distance ou une durée, ou « not stated ».',
  'spec/limits-empty': ({ unit }, say) =>
    `Ces limites (${writeUnitName(unit, say)}) n’ont ni minimum ni maximum. En donner un, ou « not stated ».`,
  'seal/zero-size': ({ part, size }) =>
    `${capitalize(part)} : la cote ${quote(size)} du joint est de 0 mm. Omettre une cote non connue.`,
  'interval/limit-not-above-zero': ({ by }) =>
    `Limite nulle (${nameOf(cardWords.dueBy, by)}). Corriger la fiche technique.`,
}

function writeSerialRange(prefix: string, from: string | undefined, to: string | undefined): string {
  if (from === undefined && to === undefined) return `${prefix}…`
  return writeRange(
    from === undefined ? undefined : `${prefix}${from}`,
    to === undefined ? undefined : `${prefix}${to}`,
  )
}
