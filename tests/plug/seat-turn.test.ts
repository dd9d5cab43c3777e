import { expect, it } from 'vitest';
import { seatTurn } from '../../src/plug/seat-turn.ts';
import { exampleOrder } from '../job/workshop.ts';

const { plug } = exampleOrder(4);

it.each([
  [{ thread: 'M14x1.25', seat: 'gasket', gasket: 'new' }, '1/2-2/3 turn'],
  [{ thread: 'M10x1', seat: 'gasket', gasket: 'new' }, '1/2 turn'],
  [{ thread: 'M14x1.25', seat: 'gasket', gasket: 'used' }, '1/12 turn'],
  [{ thread: 'M14x1.25', seat: 'conical' }, '1/16 turn'],
] as const)('the turn advised for %o is %s', (fit, turn) => {
  const { gasket: _gasket, ...bare } = plug;
  expect(seatTurn({ ...bare, ...fit }).turn).toBe(turn);
});

it('takes a plug that goes back for one with a used gasket', () => {
  const { gasket: _gasket, ...bare } = plug;
  expect(seatTurn({ ...bare, seat: 'gasket', condition: 'used' }).seat).toBe('used-gasket');
});
