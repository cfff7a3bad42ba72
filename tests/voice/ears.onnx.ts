// The ONNX format (onnx.proto3), as far as tiny models need it; the field numbers stand beside the messages.

export type Bytes = Uint8Array

const varint = (value: number | bigint): Bytes => {
  let n = BigInt.asUintN(64, BigInt(value))
  const out: number[] = []
  do {
    out.push(Number(n & 0x7fn) | (n > 0x7fn ? 0x80 : 0))
    n >>= 7n
  } while (n > 0n)
  return Uint8Array.from(out)
}
const int = (field: number, value: number | bigint): Bytes => Buffer.concat([varint(field * 8), varint(value)])
const bytes = (field: number, body: Bytes | string): Bytes => {
  const b = typeof body === 'string' ? Buffer.from(body) : body
  return Buffer.concat([varint(field * 8 + 2), varint(b.length), b])
}
export const float = (field: number, value: number): Bytes => {
  const b = Buffer.alloc(4)
  b.writeFloatLE(value)
  return Buffer.concat([varint(field * 8 + 5), b])
}
const all = (...parts: Bytes[]): Bytes => Buffer.concat(parts)

export { all as joined, bytes as block }

/** Element types of tensors. */
export const FLOAT = 1
export const INT32 = 6
export const INT64 = 7

/** TensorProto: dims 1, data_type 2, name 8, raw_data 9. */
export const tensor = (name: string, dims: number[], data: Float32Array | BigInt64Array): Bytes =>
  all(
    ...dims.map(d => int(1, d)),
    int(2, data instanceof Float32Array ? FLOAT : INT64),
    bytes(8, name),
    bytes(9, new Uint8Array(data.buffer)),
  )

/** ValueInfoProto: name 1, type 2 (tensor_type 1: elem_type 1, shape 2: dim 1: dim_value 1, dim_param 2). */
export const value = (name: string, type: number, dims: (number | string)[]): Bytes =>
  all(
    bytes(1, name),
    bytes(2, bytes(1, all(int(1, type), bytes(2, all(...dims.map(d => bytes(1, typeof d === 'number' ? int(1, d) : bytes(2, d)))))))),
  )

/** NodeProto: input 1, output 2, op_type 4, attribute 5 (AttributeProto: name 1, i 3, ints 8, type 20: INT 2, INTS 7). */
export const node = (op: string, inputs: string[], outputs: string[], attributes: Record<string, number | number[]> = {}): Bytes =>
  all(
    ...inputs.map(i => bytes(1, i)),
    ...outputs.map(o => bytes(2, o)),
    bytes(4, op),
    ...Object.entries(attributes).map(([name, v]) =>
      bytes(5, all(bytes(1, name), ...(typeof v === 'number' ? [int(3, v), int(20, 2)] : [...v.map(x => int(8, x)), int(20, 7)]))),
    ),
  )

interface Graph {
  nodes: Bytes[]
  constants?: Bytes[]
  inputs: Bytes[]
  outputs: Bytes[]
  properties?: Record<string, string | number>
}

/** ModelProto: ir_version 1, graph 7 (node 1, name 2, initializer 5, input 11, output 12), opset_import 8 (version 2), metadata_props 14. */
export const model = (g: Graph): Bytes =>
  all(
    int(1, 8),
    bytes(
      7,
      all(
        ...g.nodes.map(n => bytes(1, n)),
        bytes(2, 'g'),
        ...(g.constants ?? []).map(c => bytes(5, c)),
        ...g.inputs.map(i => bytes(11, i)),
        ...g.outputs.map(o => bytes(12, o)),
      ),
    ),
    bytes(8, int(2, 17)),
    ...Object.entries(g.properties ?? {}).map(([k, v]) => bytes(14, all(bytes(1, k), bytes(2, String(v))))),
  )
