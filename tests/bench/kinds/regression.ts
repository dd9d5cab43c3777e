/** Multinomial logistic regression by Newton's method with a small ridge; the last class is the reference. */
export function fitLogistic(
  rows: readonly (readonly number[])[],
  classes: readonly number[],
  classCount: number,
  ridge = 1e-2,
): number[][] {
  const terms = rows[0]?.length ?? 0;
  const { scaled, back } = standardized(rows, terms);
  const size = terms * (classCount - 1);
  let beta = new Array<number>(size).fill(0);
  for (let round = 0; round < 60; round++) {
    const gradient = beta.map((value) => -ridge * value);
    const hessian = Array.from({ length: size }, (_, i) =>
      Array.from({ length: size }, (_, j) => (i === j ? ridge : 0)),
    );
    for (const [n, row] of scaled.entries())
      accumulate(row, classes[n] ?? 0, beta, gradient, hessian, classCount - 1);
    const step = solved(hessian, gradient);
    const longest = Math.max(...step.map(Math.abs));
    const damping = Math.min(1, 4 / longest);
    beta = beta.map((value, i) => value + damping * (step[i] ?? 0));
    if (longest < 1e-7) break;
  }
  return Array.from({ length: classCount - 1 }, (_, k) => back(beta.slice(k * terms, (k + 1) * terms)));
}

function accumulate(
  row: readonly number[],
  target: number,
  beta: readonly number[],
  gradient: number[],
  hessian: number[][],
  free: number,
): void {
  const terms = row.length;
  const scores = Array.from({ length: free }, (_, k) =>
    row.reduce((sum, x, i) => sum + x * (beta[k * terms + i] ?? 0), 0),
  );
  const top = Math.max(0, ...scores);
  const weights = scores.map((score) => Math.exp(score - top));
  const sum = Math.exp(-top) + weights.reduce((a, b) => a + b, 0);
  const p = weights.map((weight) => weight / sum);
  for (let k = 0; k < free; k++) {
    const pk = p[k] ?? 0;
    const miss = (target === k ? 1 : 0) - pk;
    for (let i = 0; i < terms; i++) {
      gradient[k * terms + i] = (gradient[k * terms + i] ?? 0) + miss * (row[i] ?? 0);
      for (let m = 0; m < free; m++) {
        const weight = pk * ((k === m ? 1 : 0) - (p[m] ?? 0)) * (row[i] ?? 0);
        const line = hessian[k * terms + i];
        if (line === undefined) continue;
        for (let j = 0; j < terms; j++)
          line[m * terms + j] = (line[m * terms + j] ?? 0) + weight * (row[j] ?? 0);
      }
    }
  }
}

/** Terms to mean 0 and deviation 1, except the constant, and the way back for the coefficients. */
function standardized(rows: readonly (readonly number[])[], terms: number) {
  const n = rows.length;
  const column = (i: number) => rows.map((row) => row[i] ?? 0);
  const mean = Array.from({ length: terms }, (_, i) =>
    i === 0 ? 0 : column(i).reduce((a, b) => a + b, 0) / n,
  );
  const deviation = mean.map((m, i) =>
    i === 0 ? 1 : Math.sqrt(column(i).reduce((sum, x) => sum + (x - m) ** 2, 0) / n) || 1,
  );
  return {
    scaled: rows.map((row) => row.map((x, i) => (x - (mean[i] ?? 0)) / (deviation[i] ?? 1))),
    back: (beta: readonly number[]) => {
      const plain = beta.map((value, i) => value / (deviation[i] ?? 1));
      const shift = plain.reduce((sum, value, i) => sum + (i === 0 ? 0 : value * (mean[i] ?? 0)), 0);
      return plain.map((value, i) => (i === 0 ? value - shift : value));
    },
  };
}

/** Gauss with pivoting. */
function solved(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
  const a = matrix.map((row, i) => [...row, right[i] ?? 0]);
  const n = a.length;
  for (let c = 0; c < n; c++) {
    let pivot = c;
    for (let r = c + 1; r < n; r++) if (Math.abs(a[r]?.[c] ?? 0) > Math.abs(a[pivot]?.[c] ?? 0)) pivot = r;
    const top = a[pivot];
    const here = a[c];
    if (top === undefined || here === undefined || top[c] === 0) throw new Error('the terms do not differ');
    a[pivot] = here;
    a[c] = top;
    for (let r = c + 1; r < n; r++) {
      const row = a[r];
      if (row === undefined) continue;
      const factor = (row[c] ?? 0) / (top[c] ?? 1);
      if (factor !== 0) for (let k = c; k <= n; k++) row[k] = (row[k] ?? 0) - factor * (top[k] ?? 0);
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let r = n - 1; r >= 0; r--) {
    const row = a[r] ?? [];
    let sum = row[n] ?? 0;
    for (let k = r + 1; k < n; k++) sum -= (row[k] ?? 0) * (x[k] ?? 0);
    x[r] = sum / (row[r] ?? 1);
  }
  return x;
}
