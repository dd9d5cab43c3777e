/** How an item of the routine was answered, in the words of the shop's own routine. */
import type { RoutineItem } from '../../job/routine.ts';

/** The text of the choice; of `done` and `not-done`, and of an item that the routine has not, the code itself. */
export const choiceText = (item: RoutineItem | undefined, as: string): string =>
  item?.choices?.find(({ id }) => id === as)?.text ?? as;
