using System.Buffers.Binary;
using System.Text;
using System.Text.Json.Nodes;
using Shaduf.Shape;

namespace Shaduf.Pack;

/// <summary>
/// Writes bodies as a binary glTF 2.0 file: metres, y up, one node for each body below one for its group, one material for each
/// trade, faces of triangles with their own normals. The same bodies give the same bytes.
/// </summary>
/// <source>Khronos glTF 2.0: chunks, accessors, right-handed, y up; east, north, up becomes (east, up, -north)</source>
public static class GlbRenderer
{
    private const uint Magic = 0x46546C67;
    private const uint JsonChunk = 0x4E4F534A;
    private const uint BinaryChunk = 0x004E4942;
    private const int Float = 5126;
    private const int UnsignedInt = 5125;

    // Base colours, linear.
    private static readonly (string Trade, Colour Colour)[] s_materials =
    [
        ("steel", Palette.Steel),
        ("concrete", Palette.Steel.Tint(0.4)),
        ("modules", Palette.Water),
        ("tank", Palette.Water.Tint(0.4)),
        ("poles", Palette.Sun),
        ("fence", Palette.Steel.Tint(0.25)),
    ];

    /// <summary>Writes the file.</summary>
    /// <param name="bodies">The bodies, at least one.</param>
    /// <returns>The file.</returns>
    /// <exception cref="ArgumentException">There is no body, or one of an unknown trade.</exception>
    public static byte[] Write(IReadOnlyList<ModelBody> bodies)
    {
        if (bodies.Count == 0)
        {
            throw new ArgumentException("A model needs at least one body.", nameof(bodies));
        }

        using var binary = new MemoryStream();
        var file = new GlbFile(binary);
        foreach (var body in bodies)
        {
            file.Add(body, Material(body.Trade));
        }

        var json = file.Json([.. s_materials]);
        return Packed(Encoding.UTF8.GetBytes(json.ToJsonString()), binary.ToArray());
    }

    private static int Material(string trade)
    {
        var index = Array.FindIndex(s_materials, material => material.Trade == trade);
        return index >= 0 ? index : throw new ArgumentException($"no material for the trade '{trade}'", nameof(trade));
    }

    private static byte[] Packed(byte[] json, byte[] binary)
    {
        var (jsonSize, binarySize) = ((json.Length + 3) / 4 * 4, (binary.Length + 3) / 4 * 4);
        var file = new byte[12 + 8 + jsonSize + 8 + binarySize];
        Put(file, 0, Magic, 2, (uint)file.Length, (uint)jsonSize, JsonChunk);
        file.AsSpan(20, jsonSize).Fill((byte)' ');
        json.CopyTo(file, 20);
        Put(file, 20 + jsonSize, (uint)binarySize, BinaryChunk);
        binary.CopyTo(file, 28 + jsonSize);
        return file;
    }

    private static void Put(byte[] file, int at, params ReadOnlySpan<uint> words)
    {
        foreach (var word in words)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(file.AsSpan(at), word);
            at += 4;
        }
    }

    // Nodes, meshes, accessors and the binary chunk while they grow.
    private sealed class GlbFile(MemoryStream binary)
    {
        private readonly JsonArray nodes = [];
        private readonly JsonArray meshes = [];
        private readonly JsonArray views = [];
        private readonly JsonArray accessors = [];
        private readonly List<(string Name, List<int> Children)> groups = [];

        public void Add(ModelBody body, int material)
        {
            var corners = body
                .Faces.SelectMany(face => face.Select(point => (At: Metres(point), Normal: Turned(Solid.Normal(face)))))
                .ToList();
            var indices = new List<uint>();
            var first = 0u;
            foreach (var face in body.Faces)
            {
                for (var i = 1u; i + 1 < face.Count; i++)
                {
                    indices.AddRange([first, first + i, first + i + 1]);
                }

                first += (uint)face.Count;
            }

            var position = Vectors([.. corners.Select(corner => corner.At)], isPosition: true);
            var normal = Vectors([.. corners.Select(corner => corner.Normal)], isPosition: false);
            var index = Indices(indices);
            meshes.Add(
                new JsonObject
                {
                    ["name"] = body.Name,
                    ["primitives"] = new JsonArray(
                        new JsonObject
                        {
                            ["attributes"] = new JsonObject { ["POSITION"] = position, ["NORMAL"] = normal },
                            ["indices"] = index,
                            ["material"] = material,
                        }
                    ),
                }
            );
            Children(body.Group).Add(nodes.Count);
            nodes.Add(new JsonObject { ["name"] = body.Name, ["mesh"] = meshes.Count - 1 });
        }

        public JsonObject Json(IReadOnlyList<(string Trade, Colour Colour)> materials)
        {
            var roots = new JsonArray();
            foreach (var (name, children) in groups)
            {
                roots.Add(nodes.Count);
                nodes.Add(
                    new JsonObject
                    {
                        ["name"] = name,
                        ["children"] = new JsonArray([.. children.Select(child => (JsonNode)child)]),
                    }
                );
            }

            return new JsonObject
            {
                ["asset"] = new JsonObject { ["version"] = "2.0", ["generator"] = "shaduf" },
                ["scene"] = 0,
                ["scenes"] = new JsonArray(new JsonObject { ["name"] = "station", ["nodes"] = roots }),
                ["nodes"] = nodes,
                ["meshes"] = meshes,
                ["materials"] = new JsonArray([.. materials.Select(Look)]),
                ["accessors"] = accessors,
                ["bufferViews"] = views,
                ["buffers"] = new JsonArray(new JsonObject { ["byteLength"] = binary.Length }),
            };
        }

        private List<int> Children(string group)
        {
            var known = groups.FindIndex(each => each.Name == group);
            if (known < 0)
            {
                groups.Add((group, []));
                known = groups.Count - 1;
            }

            return groups[known].Children;
        }

        private static JsonNode Look((string Trade, Colour Colour) material) =>
            new JsonObject
            {
                ["name"] = material.Trade,
                ["doubleSided"] = false,
                ["pbrMetallicRoughness"] = new JsonObject
                {
                    ["baseColorFactor"] = new JsonArray(
                        Linear(material.Colour.Red),
                        Linear(material.Colour.Green),
                        Linear(material.Colour.Blue),
                        1.0
                    ),
                    ["metallicFactor"] = 0.0,
                    ["roughnessFactor"] = 0.8,
                },
            };

        // Screens show the 2.2th power of what is told.
        private static double Linear(byte part) => Math.Round(Math.Pow(part / 255.0, 2.2), 4);

        private static float[] Metres(Point point) =>
            [(float)(point.XMm / 1000), (float)(point.ZMm / 1000), (float)(-point.YMm / 1000)];

        private static float[] Turned(Point normal) => [(float)normal.XMm, (float)normal.ZMm, (float)-normal.YMm];

        private int Vectors(IReadOnlyList<float[]> vectors, bool isPosition)
        {
            var start = binary.Length;
            Span<byte> word = stackalloc byte[4];
            foreach (var part in vectors.SelectMany(vector => vector))
            {
                BinaryPrimitives.WriteSingleLittleEndian(word, part);
                binary.Write(word);
            }

            var accessor = new JsonObject
            {
                ["bufferView"] = View(start, 34962),
                ["componentType"] = Float,
                ["count"] = vectors.Count,
                ["type"] = "VEC3",
            };
            if (isPosition)
            {
                accessor["min"] = Ends(vectors, parts => parts.Min());
                accessor["max"] = Ends(vectors, parts => parts.Max());
            }

            accessors.Add(accessor);
            return accessors.Count - 1;
        }

        private static JsonArray Ends(IReadOnlyList<float[]> vectors, Func<IEnumerable<float>, float> end) =>
            new([.. Enumerable.Range(0, 3).Select(i => (JsonNode)end(vectors.Select(vector => vector[i])))]);

        private int Indices(List<uint> indices)
        {
            var start = binary.Length;
            Span<byte> word = stackalloc byte[4];
            foreach (var index in indices)
            {
                BinaryPrimitives.WriteUInt32LittleEndian(word, index);
                binary.Write(word);
            }

            accessors.Add(
                new JsonObject
                {
                    ["bufferView"] = View(start, 34963),
                    ["componentType"] = UnsignedInt,
                    ["count"] = indices.Count,
                    ["type"] = "SCALAR",
                }
            );
            return accessors.Count - 1;
        }

        private int View(long start, int target)
        {
            views.Add(
                new JsonObject
                {
                    ["buffer"] = 0,
                    ["byteOffset"] = start,
                    ["byteLength"] = binary.Length - start,
                    ["target"] = target,
                }
            );
            return views.Count - 1;
        }
    }
}
