/** Whether the terminal has more letters than plain ASCII. */
export function speaksUtf8(): boolean {
  const { LC_ALL, LC_CTYPE, LANG } = process.env;
  return process.platform === 'win32' || /utf-?8/i.test(LC_ALL || LC_CTYPE || LANG || '');
}
