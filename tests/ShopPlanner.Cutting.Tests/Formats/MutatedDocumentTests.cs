using System.Text;
using ShopPlanner.Cutting.Formats;

namespace ShopPlanner.Cutting.Tests.Formats;

/// <summary>Damaged documents, from a fixed seed: reading gives a document or faults, never both, neither or an exception.</summary>
public sealed class MutatedDocumentTests
{
    private const int Rounds = 5000;

    // Bits of text that change a document's meaning more often than a chance byte does.
    private static readonly byte[][] Pieces =
    [
        .. new[]
        {
            "null",
            "true",
            "-",
            "0",
            "1e400",
            "1e-400",
            "99999999999999999999",
            "\"\"",
            "[]",
            "{}",
            "{",
            "]",
            ",",
            ":",
            "\"",
            "\\ud800",
            "\\u0000",
            "\"id\":\"A\",",
            "\"8 ft\"",
            "½",
            "NaN",
        }.Select(Encoding.UTF8.GetBytes),
    ];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_damaged_request_is_read_or_refused(int version) =>
        EachDamage(
            version == 1 ? Documents.Request : PlaceMembersTests.Second,
            utf8 => CutRequestJson.Read(utf8) is var (request, faults) && request is null == faults.Length > 0
        );

    [Fact]
    public void A_damaged_plan_is_read_or_refused() =>
        EachDamage(Documents.Plan, utf8 => CutPlanJson.Read(utf8) is var (plan, faults) && plan is null == faults.Length > 0);

    private static void EachDamage(string json, Func<byte[], bool> isSound)
    {
        var random = new Random(20_251);
        for (var round = 0; round < Rounds; round++)
        {
            var damaged = Damage(Encoding.UTF8.GetBytes(json), random);
            Assert.True(isSound(damaged), $"round {round}: {Encoding.UTF8.GetString(damaged)}");
        }
    }

    private static byte[] Damage(byte[] utf8, Random random)
    {
        for (var times = random.Next(1, 4); times > 0 && utf8.Length > 0; times--)
        {
            var at = random.Next(utf8.Length);
            utf8 = random.Next(4) switch
            {
                0 => utf8[..at],
                1 => [.. utf8[..at], (byte)random.Next(256), .. utf8[(at + 1)..]],
                2 => [.. utf8[..at], .. utf8[Math.Min(utf8.Length, at + random.Next(1, 12))..]],
                _ =>
                [
                    .. utf8[..at],
                    .. Pieces[random.Next(Pieces.Length)],
                    .. utf8[Math.Min(utf8.Length, at + random.Next(0, 6))..],
                ],
            };
        }

        return utf8;
    }
}
