using ToiletAid.Core.Person;
using ToiletAidTui.Screens;

namespace ToiletAid.Acceptance.Tests.FullScreen;

/// <summary>No screen is a trap.</summary>
public sealed class WaysOutTests
{
    [Fact]
    public void Every_screen_can_be_left_in_three_keys_and_has_help()
    {
        var seen = new HashSet<string>();
        foreach (string[] way in Ways())
        {
            var model = new Model(way[0] == "start" ? null : Depth.Full, all: true);
            foreach (string key in way[1..])
            {
                model.Press(key);
            }

            seen.Add(model.Shell.Current.Name);
            string name = model.Shell.Current.Name;
            model.Press(Keys.Control('G'));
            Assert.Equal("help", model.Shell.Current.Name);
            model.Press(Keys.Escape);
            Assert.Equal(name == "help" ? model.Shell.Current.Name : name, model.Shell.Current.Name);
            model.Press(Keys.Control('C'));
            if (model.Shell.Ending == Ending.None)
            {
                model.Press("3");
                model.Press(Keys.Enter);
            }

            Assert.Equal(Ending.Left, model.Shell.Ending);
        }

        Assert.True(seen.Count >= 12, string.Join(", ", seen));
    }

    /// <summary>Keys that lead to every kind of screen.</summary>
    private static IEnumerable<string[]> Ways() =>
    [
        ["start"],
        ["start", "1", Keys.Enter],
        ["start", "2", Keys.Enter],
        ["start", "3", Keys.Enter],
        ["start", "4", Keys.Enter],
        ["start", "4", Keys.Enter, "1", Keys.Enter],
        ["start", "4", Keys.Enter, "1", Keys.Enter, "1", Keys.Enter],
        ["start", "5", Keys.Enter],
        ["start", "5", Keys.Enter, "1", Keys.Enter],
        ["start", "6", Keys.Enter],
        ["start", "6", Keys.Enter, "1", Keys.Enter],
        ["start", "7", Keys.Enter],
        ["start", Keys.F9],
        ["visit"],
        ["visit", "0", Keys.Enter],
        ["visit", "0", Keys.Enter, "0", Keys.Enter],
        ["visit", "0", Keys.Enter, Keys.Control('E')],
        ["visit", "0", Keys.Enter, Keys.Control('S')],
        ["visit", "0", Keys.Enter, Keys.Control('R')],
        ["visit", "0", Keys.Enter, Keys.Control('C')],
        ["visit", "0", Keys.Enter, Keys.F4],
        ["visit", Keys.Control('K')],
        ["visit", Keys.Control('D')],
        ["visit", Keys.Control('K'), "L", Keys.Enter],
    ];
}
