using System.Globalization;
using ToiletAid.App.Files;
using ToiletAid.App.FileSystem;
using ToiletAid.App.Store;
using ToiletAid.TestKit;

// Saves one session after another to a profile and says the number of each once the store has returned. Tests start it to kill it, or several at once.
// Arguments: the profile, the number of the first session, how many, and "draft" to keep each in a draft before it is saved, as an interview does, and to say that too.
string path = args[0];
int first = int.Parse(args[1], CultureInfo.InvariantCulture), count = int.Parse(args[2], CultureInfo.InvariantCulture);
var store = new ProfileStore(BuiltIn.Questions());
using var output = new StreamWriter(Console.OpenStandardOutput()) { AutoFlush = true };
StoredProfile? seen = File.Exists(path) ? store.Open(path).Value : null;
WarmUp(store);
using var journal = args is [_, _, _, "draft"] ? AnswerJournal.Start(path, BuiltIn.Questions(), passphrase: null) : null;
output.WriteLine("ready");
for (int i = first; i < first + count; i++)
{
    if (journal is not null)
    {
        journal.Save(NumberedVisit.Session(i));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"draft {i}"));
    }

    var saved = Patiently(() => store.Add(path, "K-014", NumberedVisit.Session(i), seen));
    if (!saved.TryGet(out var now) || now.WasThere)
    {
        Console.Error.WriteLine(saved.Value is null ? saved.Issues[0].Sentence(path) : $"session {i} was there already");
        return 1;
    }

    seen = now.Stored;
    output.WriteLine(i.ToString(CultureInfo.InvariantCulture));
}

return 0;

// A save elsewhere, so that the first one that counts is not spent on compiling.
static void WarmUp(ProfileStore store)
{
    string folder = Directory.CreateTempSubdirectory("toiletaid-test-").FullName, path = Path.Combine(folder, "K-1.json");
    store.Add(path, "K-1", NumberedVisit.Session(0), seen: null);
    store.Add(path, "K-1", NumberedVisit.Session(1), store.Open(path).Value);
    using (var journal = AnswerJournal.Start(path, BuiltIn.Questions(), passphrase: null))
    {
        journal.Save(NumberedVisit.Session(0));
    }

    Directory.Delete(folder, recursive: true);
}

// On a slow machine the folder may stay locked for longer than a save waits. A person would try again, and so does this.
static Checked<Saved> Patiently(Func<Checked<Saved>> save)
{
    while (true)
    {
        try
        {
            return save();
        }
        catch (FolderBusyException)
        {
            // Again.
        }
    }
}
