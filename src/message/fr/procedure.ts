import type { AtPart, PartKind, ProcedureCodes, RampObstacle } from '../../procedure/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize, join, nameOf } from '../phrases.js'
import { joinQuoted, quote, SIGNAL_WORDS, writeFactNames } from './words.js'

/**
 * `« drain plug » de « front differential » (left)`; `fallback` if no part is named. Sentences avoid a preposition in
 * front of it.
 */
function writePart({ part, gearcase, instance }: AtPart, fallback: string): string {
  const instanceText = instance === undefined ? '' : ` (${instance})`
  if (part === undefined) return gearcase === undefined ? fallback : `${quote(gearcase)}${instanceText}`
  return `${quote(part)}${gearcase === undefined ? '' : ` de ${quote(gearcase)}`}${instanceText}`
}

/** The part in front of a colon. */
const nameOpening = (params: AtPart, fallback: string) => `${capitalize(writePart(params, fallback))} :`

/** The gearcase of the part. */
function writeGearcase({ gearcase, instance }: AtPart): string {
  return gearcase === undefined ? 'le carter' : writePart({ gearcase, ...(instance && { instance }) }, '')
}
const nameGearcase = (params: AtPart) => `${capitalize(writeGearcase(params))} :`

const RAMP_OBSTACLES: Readonly<Record<RampObstacle, (part: string) => string>> = {
  'must not run': () => 'cette machine ne doit pas tourner avant sa vidange.',
  'manual forbids ramps': (part) => `le manuel interdit les rampes pour les roues de ${part}.`,
  'axle not known': () => 'la fiche technique ne dit pas quel essieu ses supports lèvent.',
  'wheel must turn': (part) =>
    `une roue doit tourner pour ${part}, et les roues sur rampes ne peuvent pas tourner.`,
  'level needs flat ground': (part) =>
    `de niveau exigé : ${part}, mais un bout sur rampes incline la machine.`,
  'level needs stands': (part) => `le manuel contrôle sur chandelles le niveau de ${part}.`,
  'guard is off': (part) => `le protecteur de ${part} serait déposé pendant que la machine roule.`,
}

const PART_KINDS: Readonly<Record<PartKind, string>> = {
  machine: 'toute la machine (sans « on »)',
  support: 'un support',
  'secured item': 'un élément à bloquer',
  axle: 'un essieu',
  shield: 'une protection',
  gearcase: 'un carter',
  opening: 'une ouverture',
  cover: 'un couvercle',
  seal: 'un joint',
  'cover seal': 'un joint de couvercle',
  filter: 'un filtre',
  'filter seal': 'un joint de filtre',
}

/** ` (étape « front-crack-fill »)`, if a step is named. */
function writeStep({ step }: AtPart): string {
  return step === undefined ? '' : ` (étape ${quote(step)})`
}

export const procedureTexts: Texts<ProcedureCodes> = {
  'procedure/variant-not-found': (params) =>
    `Seules certaines variantes ont cette pièce : ${writePart(params, 'pièce non nommée')}, et aucune étape ne détermine la variante de cette machine${writeStep(params)}. Déterminer d’abord la variante.`,
  'procedure/manual-not-read': (params) =>
    `Le travail commence avant l’étape de lecture du manuel de la machine${writeStep(params)}. Mettre cette étape en premier.`,
  'procedure/protection-not-worn': (params) =>
    `Le travail commence avant la mise des gants et de la protection des yeux${writeStep(params)}. Mettre cette étape en premier.`,
  'procedure/machine-not-on-level-ground': (params) =>
    `Le travail commence avant que la machine soit garée sur un sol plat${writeStep(params)}. La garer d’abord.`,
  'procedure/engine-running': (params) =>
    `Le moteur tourne peut-être encore${writeStep(params)}. L’arrêter avant le travail.`,
  'procedure/wheels-not-chocked': (params) =>
    `Aucune roue n’est calée${writeStep(params)}. Caler d’abord les roues qui restent au sol.`,
  'procedure/machine-not-secured': (params) =>
    `Le travail commence avant que soit bloqué tout ce que liste la fiche technique${writeStep(params)}. Bloquer d’abord.`,
  'procedure/machine-not-secured-for-run': (params) =>
    `La machine tourne avant que soit bloqué tout ce que la fiche technique liste pour un essai${writeStep(params)}. Bloquer d’abord.`,
  'procedure/run-without-oil': (params) =>
    `La machine tourne alors qu’un carter est vidé${writeStep(params)} : ses engrenages tournent à sec. Verser d’abord l’huile neuve.`,
  'procedure/lowered-with-drain-open': (params) =>
    `La machine est descendue alors qu’un bouchon de vidange ou un couvercle est déposé${writeStep(params)} : l’huile coule, et l’ouverture est hors d’atteinte. La refermer d’abord.`,
  'procedure/chocks-or-pan-in-place': (params) =>
    `La machine tourne avec les cales ou le bac de vidange en place${writeStep(params)}. Les retirer d’abord.`,
  'procedure/guard-not-refitted': (params) =>
    `La machine tourne sans le protecteur de ses pièces mobiles${writeStep(params)}. Remonter d’abord le protecteur.`,
  'procedure/chocks-on-lifted-wheels': (params) =>
    `Les cales sont à des roues qui quittent le sol${writeStep(params)}. Caler les roues d’un essieu qui reste au sol.`,
  'procedure/axle-not-chocked': (params) =>
    `Seule une partie des essieux qui restent au sol est calée${writeStep(params)}. Caler des deux côtés chaque roue qui reste au sol.`,
  'procedure/jack-as-support': (params) =>
    `Le travail se fait sous une machine que seul le cric tient${writeStep(params)}. La poser d’abord sur chandelles : un cric lève, il ne tient pas.`,
  'procedure/ramps-and-jack': (params) =>
    `La machine est levée au cric alors qu’elle est sur des rampes${writeStep(params)} ; elle peut en rouler. Descendre d’abord des rampes.`,
  'procedure/ramps-not-permitted': (params) =>
    `Le manuel n’autorise pas ces roues sur des rampes${writeStep(params)}. Utiliser le cric et des chandelles.`,
  'procedure/driven-with-plug-loose': (params) =>
    `La machine descend de ses rampes avec un bouchon, un couvercle ou un filtre desserré${writeStep(params)}. Serrer d’abord ; un bouchon de remplissage ou de niveau peut être vissé à la main.`,
  'procedure/machine-not-raised': (params) =>
    `La machine n’a pas été levée${writeStep(params)}. La lever d’abord, ou omettre cette étape.`,
  'procedure/drain-not-raised': (params) =>
    `${nameOpening(params, 'le carter')} la vidange commence avant que la machine soit levée pour cela${writeStep(params)}. La lever d’abord : une fois le bouchon déposé, c’est trop tard.`,
  'procedure/run-on-stands': (params) =>
    `La machine tourne ou se déplace alors qu’elle est levée${writeStep(params)}. La descendre d’abord.`,
  'procedure/machine-must-not-run': (params) =>
    `La machine tourne dans son ancienne huile, alors qu’un événement noté l’interdit${writeStep(params)}. Ne pas la faire tourner ni la remorquer : la pousser ou la treuiller, et la porter.`,
  'procedure/wheel-not-clear': (params) =>
    `${nameOpening(params, 'le carter')} la roue ne peut pas tourner tant qu’elle est au sol${writeStep(params)}. Lever d’abord la machine.`,
  'procedure/wheel-turned-with-plug-out': (params) =>
    `La roue est tournée alors que cette ouverture est ouverte : ${writePart(params, 'un bouchon')}${writeStep(params)}. Visser d’abord le bouchon à la main.`,
  'procedure/wrong-attitude': (params) =>
    `${nameOpening(params, 'le carter')} la machine n’est pas dans la position que le manuel exige pour le niveau${writeStep(params)}. La descendre, ou la poser sur ses chandelles, selon la fiche technique.`,
  'procedure/area-not-cleaned': (params) =>
    `${nameOpening(params, 'l’ouverture')} ouverture avant le nettoyage du pourtour${writeStep(params)}. Nettoyer d’abord, sinon la saleté y tombe.`,
  'procedure/shield-in-the-way': (params) =>
    `${nameOpening(params, 'le carter')} le travail commence alors que la protection gêne${writeStep(params)}. Déposer d’abord la protection.`,
  'procedure/fill-not-cracked': (params) =>
    `${nameOpening(params, 'la vidange')} ouverture avant de savoir si le bouchon de remplissage se débloque${writeStep(params)}. Débloquer d’abord le bouchon de remplissage : un carter vidé qu’on ne peut pas remplir immobilise la machine.`,
  'procedure/fill-plug-loose': (params) =>
    `${nameOpening(params, 'la vidange')} ouverture alors que le bouchon de remplissage est encore desserré${writeStep(params)}. Revisser d’abord le bouchon de remplissage à la main.`,
  'procedure/plug-not-cracked': (params) =>
    `${nameOpening(params, 'le bouchon')} encore serré${writeStep(params)}. Débloquer d’abord.`,
  'procedure/no-pan': (params) =>
    `${nameOpening(params, 'l’ouverture')} aucun bac dessous au moment d’ouvrir${writeStep(params)}. Placer d’abord le bac.`,
  'procedure/opening-closed': (params) =>
    `${nameOpening(params, 'l’ouverture')} pas ouvert${writeStep(params)}. Ouvrir d’abord.`,
  'procedure/drain-not-out': (params) =>
    `${nameOpening(params, 'la vidange')} la vidange commence alors que le bouchon est en place${writeStep(params)}. Déposer d’abord.`,
  'procedure/part-not-removed': (params) =>
    `${nameOpening(params, 'la pièce')} pas de dépose avant cette étape, qui n’est donc pas possible${writeStep(params)}. Déposer d’abord.`,
  'procedure/fill-not-vented': (params) =>
    `${nameOpening(params, 'la vidange')} l’huile coule alors que l’orifice de remplissage est fermé${writeStep(params)}. Déposer le bouchon de remplissage pour laisser entrer l’air.`,
  'procedure/oil-not-warm': (params) =>
    `L’huile est vidangée froide${writeStep(params)}. La tiédir d’abord, pour qu’elle emporte la saleté : tiède, pas chaude.`,
  'procedure/sample-not-taken': (params) =>
    `${nameGearcase(params)} aucun prélèvement d’huile${writeStep(params)}, mais l’entretien l’exige. Prélever au milieu du jet.`,
  'procedure/sample-too-late': (params) =>
    `${nameGearcase(params)} l’huile a déjà coulé${writeStep(params)}. Prélever pendant qu’elle coule ; l’huile du bac ne vaut rien comme prélèvement.`,
  'procedure/breather-not-cleared': (params) =>
    `${nameGearcase(params)} le reniflard n’a pas été contrôlé${writeStep(params)}. S’assurer d’abord qu’il est dégagé.`,
  'procedure/wrong-wheel-mark': (params) =>
    `${nameOpening(params, 'l’ouverture')} la roue n’est pas dans la position exigée${writeStep(params)}. La tourner d’abord à son repère, bouchon en place.`,
  'procedure/magnet-not-inspected': (params) =>
    `${nameOpening(params, 'la pièce')} l’aimant n’a pas été examiné${writeStep(params)}. L’examiner avant le remontage. S’il porte des copeaux ou des morceaux, ne pas remplir.`,
  'procedure/magnet-not-cleaned': (params) =>
    `${nameOpening(params, 'la pièce')} l’aimant est remonté sale${writeStep(params)}. L’essuyer d’abord.`,
  'procedure/filter-before-drain': (params) =>
    `${nameOpening(params, 'le filtre')} dépose avant la vidange${writeStep(params)}. Vidanger d’abord, sinon toute l’huile sort par là.`,
  'procedure/filter-not-reached': (params) =>
    `${nameOpening(params, 'le filtre')} derrière un bouchon ou un couvercle encore en place${writeStep(params)}. Le déposer d’abord.`,
  'procedure/filter-not-inspected': (params) =>
    `${nameOpening(params, 'le filtre')} pas de recherche de métal${writeStep(params)}. Examiner d’abord. En présence de copeaux ou de morceaux, ne pas remplir.`,
  'procedure/filter-not-cleaned': (params) =>
    `${nameOpening(params, 'la crépine')} remontage sans nettoyage${writeStep(params)}. Nettoyer d’abord.`,
  'procedure/filter-left-out': (params) =>
    `${nameOpening(params, 'le bouchon ou couvercle')} fermeture alors que le filtre derrière est déposé${writeStep(params)}. Monter d’abord le filtre.`,
  'procedure/old-seal-not-removed': (params) =>
    `${nameOpening(params, 'la pièce')} l’ancien joint est encore en place${writeStep(params)}. Le retirer d’abord, et s’assurer qu’il ne colle pas au carter.`,
  'procedure/face-not-wiped': (params) =>
    `${nameOpening(params, 'la pièce')} la face de joint n’a pas été essuyée${writeStep(params)}. L’essuyer d’abord.`,
  'procedure/seal-not-renewed': (params) =>
    `${nameOpening(params, 'la pièce')} remontage sans le joint qu’exige la fiche technique${writeStep(params)}. Monter un joint neuf, appliquer le produit d’étanchéité ou contrôler l’ancien joint, selon la fiche. Un bouchon débloqué compte comme ouvert.`,
  'procedure/part-not-fitted': (params) =>
    `${nameOpening(params, 'la pièce')} serrage avant le montage avec son joint${writeStep(params)}. Monter d’abord.`,
  'procedure/oil-not-drained': (params) =>
    `${nameOpening(params, 'le carter')} l’ancienne huile n’est jamais vidangée${writeStep(params)}. La vidanger avant de verser l’huile neuve.`,
  'procedure/drain-left-closed': (params) =>
    `${nameOpening(params, 'le carter')} une autre vidange n’est jamais ouverte${writeStep(params)}. La fiche technique la cite sous « also » : vidanger là aussi avant de verser l’huile neuve.`,
  'procedure/oil-not-inspected': (params) =>
    `${nameGearcase(params)} l’ancienne huile n’est pas examinée${writeStep(params)}. L’examiner tant que le carter est ouvert.`,
  'procedure/oil-not-measured': (params) =>
    `${nameGearcase(params)} l’huile neuve n’est pas mesurée${writeStep(params)}. Mesurer d’abord la quantité.`,
  'procedure/additive-missing': (params) =>
    `${nameOpening(params, 'le carter')} l’huile entre sans l’additif qu’exige la fiche technique${writeStep(params)}. L’ajouter d’abord.`,
  'procedure/oil-poured-twice': (params) =>
    `${nameGearcase(params)} toute la quantité est versée une deuxième fois${writeStep(params)} : trop d’huile mousse et chasse les joints. Retirer cette étape, ou vidanger d’abord.`,
  'procedure/drain-not-tightened': (params) =>
    `${nameOpening(params, 'l’orifice de remplissage')} l’huile est versée alors qu’un bouchon, un couvercle ou un filtre plus bas n’est pas serré${writeStep(params)}. Le serrer d’abord.`,
  'procedure/cover-not-cured': (params) =>
    `${nameOpening(params, 'l’orifice de remplissage')} l’huile est versée avant le durcissement du produit d’étanchéité du couvercle${writeStep(params)}. Attendre d’abord le durcissement.`,
  'procedure/cover-not-tightened': (params) =>
    `${nameOpening(params, 'le couvercle')} le produit d’étanchéité durcit avant le serrage${writeStep(params)}. Serrer d’abord.`,
  'procedure/hose-not-empty': (params) =>
    `Il y a encore de l’huile dans le tuyau${writeStep(params)}. Attendre qu’il soit vide avant de contrôler le niveau ou de refermer : ${writePart(params, 'l’orifice de remplissage')}.`,
  'procedure/oil-not-settled': (params) =>
    `${nameOpening(params, 'l’ouverture')} le niveau est contrôlé avant le repos de l’huile${writeStep(params)}. Laisser d’abord reposer.`,
  'procedure/level-not-checked': (params) =>
    `${nameOpening(params, 'l’orifice de niveau')} le niveau n’est jamais contrôlé${writeStep(params)}. Le contrôler tant que le bouchon est déposé.`,
  'procedure/level-not-rechecked': (params) =>
    `${nameOpening(params, 'l’orifice de niveau')} le niveau n’est pas contrôlé de nouveau après l’essai${writeStep(params)}. Le contrôler de nouveau : l’essai répartit l’huile.`,
  'procedure/oil-not-topped-up': (params) =>
    `Aucune étape ne fait l’appoint après le deuxième contrôle : ${writePart(params, 'le niveau')}${writeStep(params)}. Ajouter cette étape.`,
  'procedure/part-not-tightened': (params) =>
    `${nameOpening(params, 'une pièce ouverte')} encore ouvert ou pas serré${writeStep(params)}. Serrer d’abord.`,
  'procedure/gearcase-not-wiped': (params) =>
    `${nameOpening(params, 'le carter')} contrôle des fuites avant l’essuyage${writeStep(params)}. Essuyer d’abord : l’huile répandue cache une fuite.`,
  'procedure/leaks-not-checked': (params) =>
    `Pas de contrôle des fuites : ${writePart(params, 'pièces ouvertes')}${writeStep(params)}. Contrôler quand tout est serré.`,
  'procedure/leaks-not-checked-after-run': (params) =>
    `Pas de contrôle des fuites après l’essai : ${writePart(params, 'pièces ouvertes')}${writeStep(params)}. Contrôler de nouveau : l’huile chaude fuit plus facilement.`,
  'procedure/filter-not-changed': (params) =>
    `${nameOpening(params, 'le carter')} un filtre ou une crépine n’est jamais déposé. Remplacer ou nettoyer tant que le carter est vide.`,
  'procedure/oil-not-refilled': (params) =>
    `${nameOpening(params, 'le carter')} vidange sans remplissage. Verser l’huile neuve avant de remonter les bouchons.`,
  'procedure/no-short-run': (params) =>
    `${nameOpening(params, 'le carter')} la fiche technique exige un deuxième contrôle du niveau après un court essai, et il n’y a pas d’essai. Ajouter l’essai et le contrôle.`,
  'procedure/shield-left-off': (params) =>
    `${nameOpening(params, 'une protection')} jamais de remontage. Remonter.`,
  'procedure/machine-not-lowered': () => 'La machine reste levée. La descendre au sol à la fin.',
  'procedure/used-oil-left': () =>
    'L’huile usagée reste dans le bac. L’évacuer dans un récipient fermé, marqué comme huile usagée.',
  'procedure/work-not-recorded': () =>
    'Le travail n’est pas noté après le serrage de la dernière pièce. Le noter à la fin.',
  'procedure/unknown-action': ({ step, action }) =>
    `Étape ${quote(step)} : action inconnue ${quote(action)}. En prendre une du tableau des actions.`,
  'procedure/duplicate-step-id': ({ step }) =>
    `Id d’étape en double ${quote(step)}. Donner à chaque étape son propre id.`,
  'procedure/wrong-part': ({ step, action, required }) =>
    `Étape ${quote(step)} : ${quote(action)} s’applique à : ${join(
      required.map((kind) => nameOf(PART_KINDS, kind)),
      'ou',
    )}. Corriger « on ».`,
  'procedure/unknown-part': ({ step, on }) =>
    `L’étape ${quote(step)} renvoie à ${on}, qui n’est pas une pièce de la fiche technique. Corriger le pointeur.`,
  'procedure/instance-missing': ({ step, gearcase, known }) =>
    `L’étape ${quote(step)} ne dit pas quel exemplaire de ${quote(gearcase)} elle vise : ${joinQuoted(known)}. Nommer l’exemplaire.`,
  'procedure/unknown-instance': ({ step, instance, gearcase, known }) =>
    known.length === 0
      ? `L’étape ${quote(step)} nomme l’exemplaire ${quote(instance)}, mais il n’y a qu’un exemplaire de ${gearcase === undefined ? 'cette pièce' : quote(gearcase)}. Omettre l’exemplaire.`
      : `L’étape ${quote(step)} nomme l’exemplaire ${quote(instance)} ; ${gearcase === undefined ? 'le carter' : quote(gearcase)} a ${joinQuoted(known, 'et')}.`,
  'procedure/wheel-mark-missing': (params) =>
    `L’étape ne dit pas où doit être le repère de la roue${writeStep(params)}. Indiquer la position du repère.`,
  'procedure/part-not-on-this-machine': (params) =>
    `Cette machine n’a pas cette pièce : ${writePart(params, 'pièce non nommée')}${writeStep(params)}. Omettre l’étape.`,
  'procedure/figure-missing': ({ step, name, pointer }) =>
    `L’étape ${quote(step)} n’a pas de ${quote(name)}. La faire renvoyer à ${pointer}.`,
  'procedure/wrong-figure': ({ step, name, pointer, found }) =>
    `Dans l’étape ${quote(step)}, ${quote(name)} renvoie à ${found}, qui appartient à une autre pièce. Renvoyer à ${pointer}.`,
  'procedure/dangling-pointer': ({ step, name, found }) =>
    `Dans l’étape ${quote(step)}, ${quote(name)} renvoie à ${found}, qui n’est pas dans la fiche technique. Corriger ou omettre le pointeur.`,
  'procedure/other-sheet': ({ named, namedRevision, sheet, revision }) =>
    `La procédure a été écrite pour la fiche technique ${quote(named)}, révision ${namedRevision} ; celle-ci est ${quote(sheet)}, révision ${revision}. La contrôler avec la fiche qu’elle cite, ou la revoir et citer cette fiche.`,
  'procedure/unknown-service': ({ service, known }) =>
    `La fiche technique n’a pas d’entretien ${quote(service)}${known.length === 0 ? '' : ` ; elle a ${joinQuoted(known, 'et')}`}.`,
  'procedure/only-without-match': ({ service, gearcase, instance }) =>
    `« only » cite l’entretien ${quote(service)} de ${quote(gearcase)}${instance === undefined ? '' : ` (${instance})`}, qui ne fait pas partie de cette intervention. Corriger les ids ou retirer l’entrée.`,
  'procedure/sample-not-possible': ({ service, gearcase }) =>
    `L’entretien ${quote(service)} exige un prélèvement d’huile de ${quote(gearcase)}, mais un prélèvement ne se fait qu’à une vidange par un bouchon de vidange.`,
  'procedure/service-not-for-this-machine': ({ service }) =>
    `L’entretien ${quote(service)} ne concerne pas cette machine ; aucune étape n’est écrite pour lui.`,
  'procedure/part-not-known': ({ part, missing }, say) =>
    `On ne sait pas si cette machine a ${quote(part)} : cela dépend de ces données : ${say.list(writeFactNames(missing))}. Vérifier d’abord la machine, comme le disent les étapes.`,
  'procedure/oil-owner-missing': ({ part }) =>
    `${quote(part)} partage l’huile d’un carter qui n’est pas dans la fiche technique ; aucune étape ne peut être écrite.`,
  'procedure/no-fill-opening': ({ gearcase }) =>
    `${quote(gearcase)} n’a pas d’orifice de remplissage sur cette machine ; aucune étape ne peut être écrite.`,
  'procedure/no-way-to-empty': ({ gearcase }) =>
    `La fiche technique ne donne aucun moyen de vider ${quote(gearcase)} sur cette machine. L’ajouter sous « emptying ».`,
  'procedure/no-level-opening': ({ gearcase }) =>
    `${quote(gearcase)} n’a pas d’orifice de niveau sur cette machine. Le niveau ne peut pas être contrôlé.`,
  'procedure/no-supports': ({ gearcase }) =>
    `Le travail sur ${quote(gearcase)} demande de lever la machine, mais la fiche technique ne cite pas de supports pour cela. Les ajouter sous « access ».`,
  'procedure/supports-on-another-axle': ({ gearcase }) =>
    `Les supports de ${quote(gearcase)} lèvent un autre essieu ; les mauvaises roues quitteraient le sol. Corriger l’essieu, ou les supports sous « access ».`,
  'procedure/wheel-on-the-ground': ({ part, gearcase }) =>
    `${quote(part)} de ${quote(gearcase)} tourne avec la roue, et la fiche technique indique un accès depuis le sol : la machine est roulée jusqu’à ce que le repère soit en position.`,
  'procedure/drain-left-out': ({ part, gearcase }) =>
    `${quote(part)} de ${quote(gearcase)} est une vidange, mais aucun moyen de vider ne la cite ; aucune étape ne l’ouvre. De l’ancienne huile peut rester, et la quantité indiquée serait alors de trop. L’ajouter sous « emptying », ou à « also » d’une autre vidange ouverte.`,
  'procedure/attitude-not-stated': ({ gearcase }) =>
    `La position de la machine pour le contrôle du niveau de ${quote(gearcase)} n’est pas indiquée. Voir le manuel.`,
  'procedure/ramps-not-possible': ({ because, part }) =>
    `Les rampes sont impossibles : ${RAMP_OBSTACLES[because](part === undefined ? 'cette machine' : quote(part))} Lever la machine sur chandelles.`,
  'procedure/ramps-not-stated': ({ part }) =>
    `Le manuel ne dit pas si ${quote(part)} peut monter sur des rampes. Demander avant d’utiliser des rampes.`,
  'procedure/second-lift': ({ gearcase }) =>
    `Le deuxième contrôle du niveau de ${quote(gearcase)}, après l’essai, demande un deuxième levage.`,
  'procedure/caution-machine-may-move': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Une machine qui roule peut vous écraser. Serrer le frein de stationnement, retirer la clé, caler les roues.`,
  'procedure/caution-must-not-run': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Des engrenages qui tournent dans l’eau, la saleté ou sans huile sont détruits en quelques minutes. Ne pas faire tourner ni remorquer la machine avant la vidange de chaque carter concerné.`,
  'procedure/caution-exhaust': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Les gaz d’échappement tuent. Faire tourner le moteur dehors ou conduire les gaz dehors.`,
  'procedure/caution-lifting': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Une machine levée peut tomber et tuer. Rester à l’écart pendant que le cric bouge ; ne jamais travailler sous un cric.`,
  'procedure/caution-parking-brake': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Un frein de stationnement sur l’essieu levé ou sa transmission peut ne pas tenir. Seules des roues calées au sol tiennent.`,
  'procedure/caution-stands': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Une chandelle faible ou qui glisse fait tomber la machine. Utiliser des chandelles prévues pour la charge sur un sol ferme ; pousser la machine pour les essayer.`,
  'procedure/caution-ramps': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Une machine qui roule ou bascule des rampes peut tuer. Utiliser des rampes plus larges que les pneus, sur un sol ferme et plat, prévues pour la machine. Tenir tout le monde à l’écart de l’avant et de l’arrière pendant qu’elle bouge. Ne pas travailler dessous avant d’avoir calé les roues au sol.`,
  'procedure/caution-hot-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : L’huile chaude brûle. La laisser refroidir jusqu’à ce qu’elle soit tiède ; tenir visage et mains à l’écart.`,
  'procedure/caution-oil-on-skin': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : L’huile usagée est nocive pour la peau. Porter des gants ; se laver ensuite au savon.`,
  'procedure/caution-wheel-turns': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : L’autre roue peut tourner aussi et happer une main. En tenir les personnes à l’écart.`,
  'procedure/caution-rolling': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Une machine qui roule peut vous écraser. Tenir les personnes à l’écart, une personne au frein, et ne rouler que sur un sol plat.`,
  'procedure/caution-chips': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Copeaux, paillettes ou morceaux dans l’huile ou sur l’aimant signalent un dommage interne. Ne pas remplir ; faire contrôler.`,
  'procedure/caution-used-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : L’huile usagée pollue le sol et l’eau. La garder dans un récipient sain, fermé et marqué.`,
  'procedure/caution-weeping-washer': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Un bouchon qui suinte à son joint demande un joint neuf, jamais plus de couple.`,
  'procedure/caution-weeping-taper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Un bouchon conique qui suinte peut être serré davantage, mais seulement dans les tours que donne le manuel.`,
  'procedure/caution-sharp-scraper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]} : Les grattoirs et les rondelles collées coupent. Tirer en s’éloignant de la main ; ne pas rayer la face de joint.`,
  'procedure/caution-shield-stays': ({ signal, shield }) =>
    `${SIGNAL_WORDS[signal]} : ${quote(shield)} reste en place. Atteindre le bouchon par le trou, et essuyer l’huile qui y coule.`,
}
