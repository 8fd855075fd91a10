import type { TranslatedWords } from '../cliWords.js'
import { answers } from './answers.js'
import { blanks } from './blanks.js'
import { commands } from './commands.js'
import { joinOr } from './count.js'
import { errors } from './errors.js'
import { keys } from './keys.js'
import { options } from './options.js'
import { reports } from './reports.js'
import { yamlProblems } from './yamlProblems.js'

/** The words of the command line in French; not reviewed by a speaker who knows the trade. */
export const fr: TranslatedWords = {
  language: 'fr',
  help: {
    title: 'drivetrain-service : planifie les vidanges de transmission d’après une fiche technique',
    usage: 'Emploi :',
    options: 'Options',
    example: 'Exemple :',
    exitCode: 'Code de sortie :',
    footer: `Les fichiers sont du JSON ou du YAML ; - est l’entrée standard. Plusieurs fichiers forment un lot : un carnet y trouve sa fiche technique
par identifiant et révision. Chaque dossier est un lot à part. Les motifs (*, ? et **) valent aussi entre guillemets ; avec ** les
fichiers de chaque dossier forment un lot.
Pour en savoir plus : drivetrain-service help <commande> --language fr. Le manuel de la machine prime toujours.`,
    printHelp: 'imprimer l’aide',
    formats: ({ names }) => `${joinOr(names)} (par défaut text)`,
  },
  placeholders: {
    options: 'options',
    command: 'commande',
    'file or folder': 'fichier ou dossier',
    'file, folder, pattern or -': 'fichier, dossier, motif ou -',
    'file.jsonl or -': 'fichier.jsonl ou -',
    'telematics.json or table.csv': 'télématique.json ou tableau.csv',
    'log or folder': 'carnet ou dossier',
    file: 'fichier',
    folder: 'dossier',
    sheet: 'fiche',
    log: 'carnet',
    record: 'rapport',
    toolbox: 'outillage',
    stock: 'stock',
    kind: 'sorte',
    FILE: 'FICHIER',
    FOLDER: 'DOSSIER',
    SHEET: 'FICHE',
    LOG: 'CARNET',
    RECORD: 'RAPPORT',
    GEARCASE: 'CARTER',
    NAME: 'NOM',
    DATE: 'DATE',
    LEVEL: 'NIVEAU',
    FORMAT: 'FORMAT',
    ID: 'ID',
    USE: 'USAGE',
    YEAR: 'ANNÉE',
    PERCENT: 'POURCENTAGE',
    WHAT: 'MOYEN',
    PAPER: 'PAPIER',
    SYSTEM: 'SYSTÈME',
    NUMBER: 'NUMÉRO',
    MARK: 'SIGNE',
    OLD: 'ANCIENNE',
  },
  commands,
  options,
  errors,
  reports,
  answers,
  keys,
  blanks,
  yamlProblems,
  standardInput: 'entrée standard',
  severities: { error: 'erreur', warning: 'avertissement', info: 'note' },
  dueStates: {
    overdue: 'en retard',
    due: 'à faire',
    'cannot tell': 'non connu',
    'due soon': 'à faire bientôt',
    'not due': 'pas encore à faire',
  },
  oilLosses: { 'no loss': 'pas de perte', 'loses oil': 'perd de l’huile', 'cannot tell': 'non connu' },
  oilVerdicts: { yes: 'Oui.', no: 'Non.', 'cannot tell': 'Non connu.', ask: 'Demander au constructeur.' },
  washerVerdicts: {
    'in the table': 'Elle convient.',
    plausible: 'Elle convient, par sa taille.',
    doubtful: 'Douteux.',
    'does not fit': 'Ne convient pas.',
    'cannot tell': 'Non connu.',
  },
  changes: { added: 'ajouté', removed: 'retiré', changed: 'changé', 'source only': 'source seulement' },
  repairEnds: {
    done: 'Il ne reste aucun constat sur les étapes.',
    rebuilt: 'Il ne reste aucun constat sur les étapes. Lire toutes les étapes avant le travail.',
    'no fix':
      'Aucun autre changement n’aide. Corriger le reste à la main, ou recommencer avec la commande `procedure`.',
    effort: 'La recherche a atteint sa limite. Corriger à la main une partie du reste, puis relancer repair.',
  },
  measures: {
    torque: 'couple',
    volume: 'volume',
    length: 'longueur',
    distance: 'distance',
    force: 'force',
    pressure: 'pression',
    temperature: 'température',
    temperatureDifference: 'différence de température',
    mass: 'masse',
    duration: 'temps',
    angle: 'angle',
    speed: 'vitesse',
    kinematicViscosity: 'viscosité cinématique',
    dynamicViscosity: 'viscosité dynamique',
    density: 'masse volumique',
  },
}
