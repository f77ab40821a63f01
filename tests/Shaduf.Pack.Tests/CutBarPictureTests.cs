using CsCheck;
using Shaduf.Workshop;

namespace Shaduf.Pack.Tests;

public sealed class CutBarPictureTests
{
    private const double WidthMm = 172;

    [Fact]
    public void However_many_pieces_a_bar_gives_their_words_stay_within_the_picture() =>
        Gen.Select(Gen.Int[1, 99], Gen.Double[1, 3000], Gen.Double[0, 80])
            .Array[1, 40]
            .Sample(pieces =>
            {
                var at = 5.0;
                var cut = new List<CutPiece>();
                foreach (var (number, lengthMm, sawDeg) in pieces)
                {
                    cut.Add(new($"B{number}", lengthMm, at) { StartDeg = sawDeg, IsNested = number % 2 == 0 });
                    at += lengthMm + 3;
                }

                var bar = new CutBar(new(at + 600, 1), cut, 600);
                var scene = CutBarPicture.Of([(bar, 2)], bar.Stock.LengthMm, WidthMm);
                Assert.Empty(scene.TextsOutside());
            });
}
