import type { AtPart, ProcedureCodes, RampObstacle } from '../../procedure/index.js'
import type { Texts } from '../catalogue.js'
import { capitalize } from '../phrases.js'
import { addArticle, SIGNAL_WORDS, writeFactNames } from './words.js'

/** `the drain plug of the front differential (left)`; `fallback` if no part is named. */
function writePart({ part, gearcase, instance }: AtPart, fallback: string): string {
  const instanceText = instance === undefined ? '' : ` (${instance})`
  if (part === undefined && gearcase !== undefined) return `the ${gearcase}${instanceText}`
  if (part === undefined) return fallback
  return gearcase === undefined
    ? `the ${part}${instanceText}`
    : `the ${part} of the ${gearcase}${instanceText}`
}

/** The gearcase of the part. */
function writeGearcase({ gearcase, instance }: AtPart): string {
  return gearcase === undefined ? 'the gearcase' : writePart({ gearcase, ...(instance && { instance }) }, '')
}

const RAMP_OBSTACLES: Readonly<Record<RampObstacle, (part: string) => string>> = {
  'must not run': () => 'this machine must not run before its oil is changed.',
  'manual forbids ramps': (part) => `the manual forbids ramps for the wheels of the ${part}.`,
  'axle not known': () => 'the sheet does not say which axle its supports lift.',
  'wheel must turn': (part) => `a wheel must turn for the ${part}, and wheels on ramps cannot turn.`,
  'level needs flat ground': (part) => `the ${part} must be level, but with one end on ramps it is tilted.`,
  'level needs stands': (part) => `the manual checks the level of the ${part} on stands.`,
  'guard is off': (part) => `the guard at the ${part} would be off while the machine drives.`,
}

/** ` (step “front-crack-fill”)`, if a step is named. */
function writeStep({ step }: AtPart): string {
  return step === undefined ? '' : ` (step “${step}”)`
}

export const procedureTexts: Texts<ProcedureCodes> = {
  'procedure/variant-not-found': (params) =>
    `Only some variants have ${writePart(params, 'this part')}, and no step finds out which variant this machine is${writeStep(params)}. Find the variant first.`,
  'procedure/manual-not-read': (params) =>
    `Work starts before the step to read the machine's own manual${writeStep(params)}. Put that step first.`,
  'procedure/protection-not-worn': (params) =>
    `Work starts before gloves and eye protection are put on${writeStep(params)}. Put that step first.`,
  'procedure/machine-not-on-level-ground': (params) =>
    `Work starts before the machine is parked on level ground${writeStep(params)}. Park it first.`,
  'procedure/engine-running': (params) =>
    `The engine may still be running${writeStep(params)}. Stop it before work starts.`,
  'procedure/wheels-not-chocked': (params) =>
    `No wheel is chocked${writeStep(params)}. Chock the wheels that stay on the ground first.`,
  'procedure/machine-not-secured': (params) =>
    `Work starts before everything that the sheet lists is secured${writeStep(params)}. Secure it first.`,
  'procedure/machine-not-secured-for-run': (params) =>
    `The machine runs before everything that the sheet lists for a run is secured${writeStep(params)}. Secure it first.`,
  'procedure/run-without-oil': (params) =>
    `The machine runs while a gearcase is drained${writeStep(params)}: its gears run dry. Pour the new oil first.`,
  'procedure/lowered-with-drain-open': (params) =>
    `The machine is lowered while a drain plug or cover is out${writeStep(params)}: oil runs out, and the opening is out of reach. Close it first.`,
  'procedure/chocks-or-pan-in-place': (params) =>
    `The machine runs with chocks or the drain pan in place${writeStep(params)}. Take them away first.`,
  'procedure/guard-not-refitted': (params) =>
    `The machine runs without its guard over moving parts${writeStep(params)}. Refit the guard first.`,
  'procedure/chocks-on-lifted-wheels': (params) =>
    `The chocks are at wheels that leave the ground${writeStep(params)}. Chock the wheels of an axle that stays on the ground.`,
  'procedure/axle-not-chocked': (params) =>
    `Only some of the axles that stay on the ground are chocked${writeStep(params)}. Chock both sides of each wheel that stays down.`,
  'procedure/jack-as-support': (params) =>
    `Work is done under a machine that only the jack holds${writeStep(params)}. Set it on stands first: a jack lifts, it does not hold.`,
  'procedure/ramps-and-jack': (params) =>
    `The machine is jacked up while it is on ramps${writeStep(params)}, and can roll off them. Drive off the ramps first.`,
  'procedure/ramps-not-permitted': (params) =>
    `The manual does not permit these wheels on ramps${writeStep(params)}. Use the jack and stands.`,
  'procedure/driven-with-plug-loose': (params) =>
    `The machine drives off its ramps with a plug, cover or filter loose${writeStep(params)}. Tighten it first; a fill or level plug may be turned in by hand.`,
  'procedure/machine-not-raised': (params) =>
    `The machine has not been raised${writeStep(params)}. Raise it first, or leave this step out.`,
  'procedure/drain-not-raised': (params) =>
    `Oil is drained from ${writePart(params, 'the gearcase')} before the machine is raised for it${writeStep(params)}. Raise it first: once the plug is out, it is too late.`,
  'procedure/run-on-stands': (params) =>
    `The machine is run or moved while it is raised${writeStep(params)}. Lower it first.`,
  'procedure/machine-must-not-run': (params) =>
    `The machine runs in its old oil, although a recorded event forbids this${writeStep(params)}. Do not run or tow it: push or winch it clear and carry it.`,
  'procedure/wheel-not-clear': (params) =>
    `The wheel of ${writePart(params, 'the gearcase')} cannot be turned while it is on the ground${writeStep(params)}. Raise the machine first.`,
  'procedure/wheel-turned-with-plug-out': (params) =>
    `The wheel is turned while ${writePart(params, 'a plug')} is open${writeStep(params)}. Screw the plug in by hand first.`,
  'procedure/wrong-attitude': (params) =>
    `The machine is not in the attitude that the manual requires for the level of ${writePart(params, 'the gearcase')}${writeStep(params)}. Lower it, or set it on its stands, as the sheet says.`,
  'procedure/area-not-cleaned': (params) =>
    `${capitalize(writePart(params, 'the opening'))} is opened before the area around it is clean${writeStep(params)}. Clean it first, or dirt falls in.`,
  'procedure/shield-in-the-way': (params) =>
    `Work on ${writePart(params, 'the gearcase')} starts while its shield is in the way${writeStep(params)}. Take the shield off first.`,
  'procedure/fill-not-cracked': (params) =>
    `${capitalize(writePart(params, 'the drain'))} is opened before the fill plug is known to come loose${writeStep(params)}. Crack the fill plug first: a drained gearcase that cannot be filled strands the machine.`,
  'procedure/fill-plug-loose': (params) =>
    `The fill plug is still loose when ${writePart(params, 'the drain')} is opened${writeStep(params)}. Screw the fill plug back in by hand first.`,
  'procedure/plug-not-cracked': (params) =>
    `${capitalize(writePart(params, 'the plug'))} is still tight${writeStep(params)}. Crack it loose first.`,
  'procedure/no-pan': (params) =>
    `No pan is under ${writePart(params, 'the opening')} when it is opened${writeStep(params)}. Place the pan first.`,
  'procedure/opening-closed': (params) =>
    `${capitalize(writePart(params, 'the opening'))} is not open${writeStep(params)}. Open it first.`,
  'procedure/drain-not-out': (params) =>
    `Draining starts while ${writePart(params, 'the drain')} is in place${writeStep(params)}. Take it out first.`,
  'procedure/part-not-removed': (params) =>
    `${capitalize(writePart(params, 'the part'))} has not been removed, so this step is not possible${writeStep(params)}. Remove it first.`,
  'procedure/fill-not-vented': (params) =>
    `Oil drains through ${writePart(params, 'the drain')} while the fill opening is closed${writeStep(params)}. Take the fill plug out to let air in.`,
  'procedure/oil-not-warm': (params) =>
    `The oil is drained cold${writeStep(params)}. Warm it first, so that it carries the dirt out: warm, not hot.`,
  'procedure/sample-not-taken': (params) =>
    `No oil sample is taken from ${writeGearcase(params)}${writeStep(params)}, but the service requires one. Take it from the middle of the stream.`,
  'procedure/sample-too-late': (params) =>
    `The oil of ${writeGearcase(params)} has already run out${writeStep(params)}. Take the sample while it runs; oil from the pan is useless as a sample.`,
  'procedure/breather-not-cleared': (params) =>
    `The breather of ${writeGearcase(params)} has not been checked${writeStep(params)}. Make sure it is clear first.`,
  'procedure/wrong-wheel-mark': (params) =>
    `The wheel is not in the position that ${writePart(params, 'the opening')} requires${writeStep(params)}. Turn it to its mark first, with the plug in.`,
  'procedure/magnet-not-inspected': (params) =>
    `The magnet of ${writePart(params, 'the part')} has not been inspected${writeStep(params)}. Inspect it before refitting. If it has chips or pieces, do not refill.`,
  'procedure/magnet-not-cleaned': (params) =>
    `The magnet of ${writePart(params, 'the part')} is refitted dirty${writeStep(params)}. Wipe it clean first.`,
  'procedure/filter-before-drain': (params) =>
    `${capitalize(writePart(params, 'the filter'))} comes off before the oil is drained${writeStep(params)}. Drain it first, or all the oil runs out there.`,
  'procedure/filter-not-reached': (params) =>
    `${capitalize(writePart(params, 'the filter'))} is behind a plug or cover that is still on${writeStep(params)}. Take that off first.`,
  'procedure/filter-not-inspected': (params) =>
    `${capitalize(writePart(params, 'the filter'))} has not been inspected for metal${writeStep(params)}. Inspect it first. If it contains chips or pieces, do not refill.`,
  'procedure/filter-not-cleaned': (params) =>
    `${capitalize(writePart(params, 'the strainer'))} goes back dirty${writeStep(params)}. Clean it first.`,
  'procedure/filter-left-out': (params) =>
    `${capitalize(writePart(params, 'the plug or cover'))} is closed while the filter behind it is out${writeStep(params)}. Fit the filter first.`,
  'procedure/old-seal-not-removed': (params) =>
    `The old seal of ${writePart(params, 'the part')} is still in place${writeStep(params)}. Remove it first, and make sure that it is not stuck to the case.`,
  'procedure/face-not-wiped': (params) =>
    `The seal face of ${writePart(params, 'the part')} has not been wiped${writeStep(params)}. Wipe it clean first.`,
  'procedure/seal-not-renewed': (params) =>
    `${capitalize(writePart(params, 'the part'))} is refitted without the seal that the sheet requires${writeStep(params)}. Fit a new seal, apply sealant or inspect the old seal, as the sheet says. A plug cracked loose counts as opened.`,
  'procedure/part-not-fitted': (params) =>
    `${capitalize(writePart(params, 'the part'))} is tightened before it is fitted with its seal${writeStep(params)}. Fit it first.`,
  'procedure/oil-not-drained': (params) =>
    `The old oil of ${writePart(params, 'the gearcase')} is never drained${writeStep(params)}. Drain it before you pour new oil.`,
  'procedure/drain-left-closed': (params) =>
    `A further drain of ${writePart(params, 'the gearcase')} is never opened${writeStep(params)}. The sheet lists it under “also”: drain there as well before you pour new oil.`,
  'procedure/oil-not-inspected': (params) =>
    `The old oil of ${writeGearcase(params)} is not inspected${writeStep(params)}. Inspect it while the gearcase is still open.`,
  'procedure/oil-not-measured': (params) =>
    `The new oil for ${writeGearcase(params)} is not measured${writeStep(params)}. Measure the refill first.`,
  'procedure/additive-missing': (params) =>
    `The oil for ${writePart(params, 'the gearcase')} goes in without the additive that the sheet requires${writeStep(params)}. Add it first.`,
  'procedure/oil-poured-twice': (params) =>
    `The whole refill goes into ${writeGearcase(params)} a second time${writeStep(params)}: too much oil foams and pushes the seals out. Remove this step, or drain first.`,
  'procedure/drain-not-tightened': (params) =>
    `Oil is poured through ${writePart(params, 'the fill opening')} while a plug, cover or filter below it is not tight${writeStep(params)}. Tighten it first.`,
  'procedure/cover-not-cured': (params) =>
    `Oil is poured through ${writePart(params, 'the fill opening')} before the sealant on the cover has cured${writeStep(params)}. Wait for the cure first.`,
  'procedure/cover-not-tightened': (params) =>
    `The sealant of ${writePart(params, 'the cover')} cures before the cover is tight${writeStep(params)}. Tighten it first.`,
  'procedure/hose-not-empty': (params) =>
    `There is still oil in the hose${writeStep(params)}. Wait until it is empty before the level is checked or ${writePart(params, 'the fill opening')} is closed.`,
  'procedure/oil-not-settled': (params) =>
    `The level at ${writePart(params, 'the opening')} is checked before the oil has settled${writeStep(params)}. Let it settle first.`,
  'procedure/level-not-checked': (params) =>
    `The level at ${writePart(params, 'the level opening')} is never checked${writeStep(params)}. Check it while the plug is out.`,
  'procedure/level-not-rechecked': (params) =>
    `The level at ${writePart(params, 'the level opening')} is not checked again after the run${writeStep(params)}. Check it again: the run spreads the oil.`,
  'procedure/oil-not-topped-up': (params) =>
    `No step tops up the oil after the second check of ${writePart(params, 'the level')}${writeStep(params)}. Add that step.`,
  'procedure/part-not-tightened': (params) =>
    `${capitalize(writePart(params, 'a part that was opened'))} is open or not tight${writeStep(params)}. Tighten it first.`,
  'procedure/gearcase-not-wiped': (params) =>
    `${capitalize(writePart(params, 'the gearcase'))} is checked for leaks before it is wiped down${writeStep(params)}. Wipe it first: spilt oil hides a leak.`,
  'procedure/leaks-not-checked': (params) =>
    `There is no leak check at ${writePart(params, 'the opened parts')}${writeStep(params)}. Check when everything is tight.`,
  'procedure/leaks-not-checked-after-run': (params) =>
    `There is no leak check at ${writePart(params, 'the opened parts')} after the run${writeStep(params)}. Check again: warm oil leaks more easily.`,
  'procedure/filter-not-changed': (params) =>
    `A filter or strainer of ${writePart(params, 'the gearcase')} is never taken off. Change or clean it while the oil is out.`,
  'procedure/oil-not-refilled': (params) =>
    `${capitalize(writePart(params, 'the gearcase'))} is drained and never refilled. Pour the new oil before its plugs are refitted.`,
  'procedure/no-short-run': (params) =>
    `The sheet requires a second level check of ${writePart(params, 'the gearcase')} after a short run, and there is no run. Add the run and the check.`,
  'procedure/shield-left-off': (params) =>
    `${capitalize(writePart(params, 'a shield'))} is never refitted. Refit it.`,
  'procedure/machine-not-lowered': () => 'The machine stays raised. Lower it to the ground at the end.',
  'procedure/used-oil-left': () =>
    'Used oil is left in the pan. Take it away in a closed container marked as used oil.',
  'procedure/work-not-recorded': () =>
    'The work is not recorded after the last part is tightened. Record it at the end.',
  'procedure/unknown-action': ({ step, action }) =>
    `Step “${step}”: unknown action “${action}”. Use one from the table of actions.`,
  'procedure/duplicate-step-id': ({ step }) => `Duplicate step id “${step}”. Give each step a unique id.`,
  'procedure/wrong-part': ({ step, action, required }, say) =>
    `Step “${step}”: “${action}” applies to ${say.list(required.map((kind) => (kind === 'machine' ? 'the whole machine (no “on”)' : addArticle(kind))))}. Correct “on”.`,
  'procedure/unknown-part': ({ step, on }) =>
    `Step “${step}” points to ${on}, which is not a part on the sheet. Correct the pointer.`,
  'procedure/instance-missing': ({ step, gearcase, known }, say) =>
    `Step “${step}” does not say which ${gearcase} it means: ${say.list(known)}. Name the instance.`,
  'procedure/unknown-instance': ({ step, instance, gearcase, known }, say) =>
    known.length === 0
      ? `Step “${step}” names the instance “${instance}”, but there is only one ${gearcase ?? 'such part'}. Leave the instance out.`
      : `Step “${step}” names the instance “${instance}”; the ${gearcase ?? 'gearcase'} has ${say.list(known)}.`,
  'procedure/wheel-mark-missing': (params) =>
    `The step does not say where the wheel's mark must be${writeStep(params)}. Name the wheel mark.`,
  'procedure/part-not-on-this-machine': (params) =>
    `This machine does not have ${writePart(params, 'the part')}${writeStep(params)}. Leave the step out.`,
  'procedure/figure-missing': ({ step, name, pointer }) =>
    `Step “${step}” has no “${name}”. Point it to ${pointer}.`,
  'procedure/wrong-figure': ({ step, name, pointer, found }) =>
    `Step “${step}” points its “${name}” to ${found}, which belongs to another part. Point it to ${pointer}.`,
  'procedure/dangling-pointer': ({ step, name, found }) =>
    `Step “${step}” points its “${name}” to ${found}, which is not on the sheet. Correct or omit the pointer.`,
  'procedure/other-sheet': ({ named, namedRevision, sheet, revision }) =>
    `The procedure was written for sheet “${named}”, revision ${namedRevision}; this is “${sheet}”, revision ${revision}. Check it against the sheet it names, or review it and name this sheet.`,
  'procedure/unknown-service': ({ service, known }, say) =>
    `The sheet has no service “${service}”${known.length === 0 ? '' : `; it has ${say.list(known)}`}.`,
  'procedure/only-without-match': ({ service, gearcase, instance }) =>
    `“only” names the service “${service}” at “${gearcase}”${instance === undefined ? '' : ` (${instance})`}, which is not part of this visit. Correct the ids or remove the entry.`,
  'procedure/sample-not-possible': ({ service, gearcase }) =>
    `The service “${service}” requires an oil sample of “${gearcase}”, but a sample can only be taken at an oil change through a drain plug.`,
  'procedure/service-not-for-this-machine': ({ service }) =>
    `The service “${service}” does not apply to this machine; no steps are written for it.`,
  'procedure/part-not-known': ({ part, missing }, say) =>
    `Unknown whether this machine has the ${part}: it depends on ${say.list(writeFactNames(missing))}. Check the machine first, as the steps say.`,
  'procedure/oil-owner-missing': ({ part }) =>
    `The ${part} shares the oil of a gearcase that is not on the sheet, so no steps can be written for it.`,
  'procedure/no-fill-opening': ({ gearcase }) =>
    `The ${gearcase} has no fill opening on this machine, so no steps can be written for it.`,
  'procedure/no-way-to-empty': ({ gearcase }) =>
    `The sheet gives no way to empty the ${gearcase} of this machine. Add it under “emptying”.`,
  'procedure/no-level-opening': ({ gearcase }) =>
    `The ${gearcase} has no level opening on this machine. Its level cannot be checked.`,
  'procedure/no-supports': ({ gearcase }) =>
    `Work on the ${gearcase} needs the machine raised, but the sheet names no supports for it. Add them under “access”.`,
  'procedure/supports-on-another-axle': ({ gearcase }) =>
    `The supports of the ${gearcase} lift another axle, so the wrong wheels would leave the ground. Correct its axle, or the supports under “access”.`,
  'procedure/wheel-on-the-ground': ({ part, gearcase }) =>
    `The ${part} of the ${gearcase} turns with its wheel, and the sheet says that it is reached from the ground: the machine is rolled until the mark is in position.`,
  'procedure/drain-left-out': ({ part, gearcase }) =>
    `The ${part} of the ${gearcase} is a drain, but no method of emptying names it, so no step opens it. Old oil may stay in, and the stated refill would then be too much. Add it under “emptying”, or to “also” of another drain that is opened.`,
  'procedure/attitude-not-stated': ({ gearcase }) =>
    `The attitude of the machine for the level check of the ${gearcase} is not stated. See the manual.`,
  'procedure/ramps-not-possible': ({ because, part = 'the machine' }) =>
    `Ramps cannot be used: ${RAMP_OBSTACLES[because](part)} Raise it on stands.`,
  'procedure/ramps-not-stated': ({ part }) =>
    `The manual does not say whether the ${part} may be driven onto ramps. Ask before you use ramps.`,
  'procedure/second-lift': ({ gearcase }) =>
    `The second level check of the ${gearcase}, after the run, needs a second lift.`,
  'procedure/caution-machine-may-move': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A machine that rolls away can crush you. Set the parking brake, take out the key, chock the wheels.`,
  'procedure/caution-must-not-run': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Gears that turn in water, in dirt or without oil are ruined in minutes. Do not run or tow the machine until the oil of every gearcase concerned is changed.`,
  'procedure/caution-exhaust': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Exhaust gas kills. Run the engine outdoors or lead the exhaust out.`,
  'procedure/caution-lifting': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A raised machine can fall and kill. Keep clear while the jack moves; never work under a jack.`,
  'procedure/caution-parking-brake': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A parking brake on the lifted axle or its driveline may not hold. Only chocked wheels on the ground do.`,
  'procedure/caution-stands': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A weak or slipping stand lets the machine fall. Use rated stands on firm ground; push the machine to test them.`,
  'procedure/caution-ramps': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A machine that rolls or tips off its ramps can kill. Use ramps wider than the tyres, on firm, level ground and rated for the machine. Keep everyone away from the front and back while it moves. Do not work under it before the wheels on the ground are chocked.`,
  'procedure/caution-hot-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Hot oil burns. Let it cool until it is warm; keep face and hands clear.`,
  'procedure/caution-oil-on-skin': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Used oil harms the skin. Wear gloves; wash with soap afterwards.`,
  'procedure/caution-wheel-turns': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: The other wheel may turn too and catch a hand. Keep people away from it.`,
  'procedure/caution-rolling': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A machine that rolls can crush you. Keep people clear, one person at the brake, and roll on level ground only.`,
  'procedure/caution-chips': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Chips, flakes or pieces in the oil or on the magnet mean damage inside. Do not refill; have it inspected.`,
  'procedure/caution-used-oil': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Used oil spoils soil and water. Keep it in a sound, closed, marked container.`,
  'procedure/caution-weeping-washer': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A plug that weeps at its seal needs a new seal, never more torque.`,
  'procedure/caution-weeping-taper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: A taper plug that weeps may be turned further, but only within the turns that the manual gives.`,
  'procedure/caution-sharp-scraper': ({ signal }) =>
    `${SIGNAL_WORDS[signal]}: Scrapers and stuck washers cut. Pull away from your hand; do not score the seal face.`,
  'procedure/caution-shield-stays': ({ signal, shield }) =>
    `${SIGNAL_WORDS[signal]}: The ${shield} stays on. Reach the plug through its hole, and wipe off the oil that runs onto it.`,
}
