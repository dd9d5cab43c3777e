import { Box, Text } from 'ink';
import type { Line, Span } from './line.ts';
import type { Tone } from './words.ts';

/** Blue, orange and pale yellow differ for every common colour vision, and in brightness too. */
const HUES: Readonly<Record<Tone, string>> = { good: '#5fafff', bad: '#ff8700', attention: '#ffe08a' };

function Piece({ span, color }: { span: Span; color: boolean }) {
  const hue = color && span.tone !== undefined ? { color: HUES[span.tone] } : {};
  return (
    <Text bold={span.bold === true} inverse={span.inverse === true} dimColor={span.dim === true} {...hue}>
      {span.text}
    </Text>
  );
}

/** A line that is already cut, drawn by Ink. */
export function Row({ line, color }: { line: Line; color: boolean }) {
  // An empty text has no height in Ink.
  if (line.length === 0) return <Text> </Text>;
  return (
    <Text wrap="truncate">
      {line.map((span, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: spans have no identity but their place
        <Piece key={at} span={span} color={color} />
      ))}
    </Text>
  );
}

/** A whole frame, its lines cut to `columns` already. */
export function Lines({
  lines,
  columns,
  color,
}: {
  lines: readonly Line[];
  columns: number;
  color: boolean;
}) {
  return (
    <Box flexDirection="column" width={columns}>
      {lines.map((line, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line of the screen is its place
        <Row key={row} line={line} color={color} />
      ))}
    </Box>
  );
}
