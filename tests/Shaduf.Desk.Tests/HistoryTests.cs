using CsCheck;
using Shaduf.Store;

namespace Shaduf.Desk.Tests;

public class HistoryTests
{
    private enum Act
    {
        Edit,
        Undo,
        Redo,
    }

    [Fact]
    public void What_the_journal_tells_is_what_two_stacks_of_texts_would_do() =>
        Gen.Int[0, 2]
            .Select(i => (Act)i)
            .Array[0, 40]
            .Sample(acts =>
            {
                var (text, number, texts) = ("", 0, new List<string>());
                var (done, undone) = (new Stack<string>(), new Stack<string>());
                var journal = new List<JournalLine>();
                var history = new History();
                foreach (var act in acts)
                {
                    var takes = act switch
                    {
                        Act.Undo => history.Back,
                        Act.Redo => history.Again,
                        _ => null,
                    };
                    if (act != Act.Edit && takes is null)
                    {
                        Assert.Empty(act == Act.Undo ? done : undone);
                        continue;
                    }

                    var next = takes is { } edit ? BackFrom(journal[edit - 1], text) : $"{text}{number}.";
                    if (act == Act.Edit)
                    {
                        done.Push(text);
                        undone.Clear();
                    }
                    else
                    {
                        var (from, to) = act == Act.Undo ? (done, undone) : (undone, done);
                        Assert.Equal(from.Pop(), next);
                        to.Push(text);
                    }

                    journal.Add(new(++number, $"{act}", TextEdit.Between(text, next), takes, default));
                    history.Add(number, takes);
                    text = next;
                }

                var read = History.Of(journal);
                Assert.Equal((history.Back, history.Again), (read.Back, read.Again));
                Assert.Equal((done.Count > 0, undone.Count > 0), (read.Back is not null, read.Again is not null));
            });

    private static string BackFrom(JournalLine line, string text) => line.Edit.Inverse.Apply(text);
}
