using CsCheck;

namespace Shaduf.Store.Tests;

public sealed class TextEditTests
{
    private static readonly Gen<string> s_text = Gen.Char["ab\n "].Array[0, 12].Select(each => new string(each));

    [Fact]
    public void An_edit_makes_the_new_text_of_the_old_and_its_inverse_the_old_of_the_new() =>
        Gen.Select(s_text, s_text)
            .Sample(
                (before, after) =>
                {
                    var edit = TextEdit.Between(before, after);
                    Assert.Equal(after, edit.Apply(before));
                    Assert.Equal(before, edit.Inverse.Apply(after));
                }
            );

    [Fact]
    public void An_edit_of_one_value_holds_that_value_only()
    {
        var edit = TextEdit.Between("depth: 60 m # told\ntank: 5\n", "depth: 72 m # told\ntank: 5\n");
        Assert.Equal(new(7, "60", "72"), edit);
    }

    [Fact]
    public void An_edit_of_another_text_is_refused() =>
        Assert.Throws<ArgumentException>(() => new TextEdit(7, "60", "72").Apply("depth: 65 m"));
}
