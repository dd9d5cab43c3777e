/**
 * What several guesses of a torque come to, each weighted by the likelihood of the readings under it (Bayesian model
 * averaging). Their number is of no account: nothing is kept of one but its share.
 */
export class Guesses {
  /** Of the likeliest one so far: the weights count from there. */
  #most = Number.NEGATIVE_INFINITY;
  #originNm = 0;
  #total = 0;
  #sum = 0;
  #squares = 0;
  #timesUs = 0;

  /** `evidence`: logarithm of the likelihood. */
  add(nm: number, variance: number, atUs: number, evidence: number): void {
    if (evidence > this.#most) this.#rise(nm, evidence);
    const weight = Math.exp(evidence - this.#most);
    const off = nm - this.#originNm;
    this.#total += weight;
    this.#sum += weight * off;
    this.#squares += weight * (variance + off * off);
    this.#timesUs += weight * atUs;
  }

  get nm(): number {
    return this.#originNm + this.#sum / this.#total;
  }

  get variance(): number {
    const mean = this.#sum / this.#total;
    return Math.max(0, this.#squares / this.#total - mean * mean);
  }

  get atUs(): number {
    return this.#timesUs / this.#total;
  }

  #rise(nm: number, evidence: number): void {
    if (this.#total === 0) this.#originNm = nm;
    const share = Math.exp(this.#most - evidence);
    this.#most = evidence;
    this.#total *= share;
    this.#sum *= share;
    this.#squares *= share;
    this.#timesUs *= share;
  }
}
