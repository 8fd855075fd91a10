/**
 * The known id that a wrong one was most likely meant to be: one slip of the keyboard away (a letter too many, too
 * few, wrong, or two swapped), and only one such.
 */
export function closestId(wrong: string, known: readonly string[]): string | undefined {
  const close = known.filter((id) => isOneSlipAway(wrong, id))
  return close.length === 1 ? close[0] : undefined
}

function isOneSlipAway(wrong: string, right: string): boolean {
  let same = 0
  while (same < wrong.length && same < right.length && wrong[same] === right[same]) same += 1
  const restWrong = wrong.slice(same)
  const restRight = right.slice(same)
  return (
    restWrong.slice(1) === restRight ||
    restWrong === restRight.slice(1) ||
    restWrong.slice(1) === restRight.slice(1) ||
    (restWrong.slice(0, 2) === [...restRight.slice(0, 2)].reverse().join('') &&
      restWrong.slice(2) === restRight.slice(2))
  )
}
