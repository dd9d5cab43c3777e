/** How an item of the routine was answered: in the reader's language where it is of the usual routine, else in the shop's words. */
import { choiceTextOf, type RoutineItem } from '../../job/routine.ts';

export { itemText } from '../../job/routine.ts';

/** The text of the choice; of `done` and `not-done`, and of an item that the routine has not, the code itself. */
export const choiceText = (item: RoutineItem | undefined, as: string): string =>
  (item === undefined ? undefined : choiceTextOf(item, as)) ?? as;
