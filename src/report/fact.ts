/** A label and what it stands for. */
export interface Fact {
  readonly label: string;
  readonly value: string;
}
