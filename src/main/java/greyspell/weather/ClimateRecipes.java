package greyspell.weather;

import greyspell.calendar.Monthly;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The invented climates that can be made by name. All places are invented. */
public final class ClimateRecipes {
  private ClimateRecipes() {}

  public static List<ClimateRecipe> all() {
    return List.of(greyMaritime(), coldContinental(), highPlateau(), southIslandCoast());
  }

  public static List<String> names() {
    return all().stream().map(ClimateRecipe::name).toList();
  }

  /** Null if there is no such recipe. */
  public static @Nullable ClimateRecipe find(String name) {
    for (ClimateRecipe recipe : all()) {
      if (recipe.name().equals(name)) {
        return recipe;
      }
    }
    return null;
  }

  /** Mild and wet; from November to January the sky is shut for weeks. */
  static ClimateRecipe greyMaritime() {
    return new ClimateRecipe(
        "grey-maritime",
        "Mewsand (invented)",
        53.2,
        6.1,
        8.0,
        1.0,
        Monthly.of(.29, .35, .41, .46, .48, .47, .47, .46, .43, .37, .30, .27),
        Monthly.of(.64, .56, .46, .38, .35, .37, .36, .37, .42, .52, .63, .66),
        0.46,
        0.40,
        0.45,
        Monthly.of(3.4, 3.7, 6.1, 9.3, 13.0, 15.8, 17.9, 17.7, 14.8, 11.0, 6.9, 4.1),
        Monthly.of(3.8, 3.6, 3.0, 2.9, 3.0, 2.8, 2.7, 2.5, 2.4, 2.8, 3.2, 3.7),
        6.5,
        Monthly.of(6.6, 6.2, 5.8, 5.1, 4.8, 4.5, 4.4, 4.3, 4.7, 5.4, 6.0, 6.4),
        0.03);
  }

  /** Far from the sea: clear frosts, deep snow, short dark spells. */
  static ClimateRecipe coldContinental() {
    return new ClimateRecipe(
        "cold-continental",
        "Otter Narrows (invented)",
        46.3,
        -93.8,
        390.0,
        -6.0,
        Monthly.of(.47, .52, .54, .51, .51, .52, .55, .53, .49, .44, .38, .41),
        Monthly.of(.38, .34, .33, .35, .34, .31, .26, .28, .33, .40, .48, .45),
        0.50,
        0.38,
        0.55,
        Monthly.of(-12.0, -9.6, -3.2, 5.0, 12.3, 17.6, 20.2, 19.0, 14.2, 7.0, -1.3, -9.0),
        Monthly.of(7.2, 6.8, 5.4, 4.6, 4.4, 3.8, 3.2, 3.3, 4.1, 4.6, 5.0, 6.6),
        10.5,
        Monthly.of(3.6, 3.7, 4.0, 4.4, 4.1, 3.5, 3.1, 3.0, 3.4, 3.8, 3.9, 3.6),
        0.09);
  }

  /** Dry, thin air, cold nights and strong sun all the year. */
  static ClimateRecipe highPlateau() {
    return new ClimateRecipe(
        "high-plateau",
        "Salt Mesa (invented)",
        38.1,
        -107.2,
        2200.0,
        -7.0,
        Monthly.of(.62, .63, .64, .64, .65, .68, .62, .62, .67, .67, .63, .61),
        Monthly.of(.20, .20, .20, .19, .16, .11, .19, .19, .13, .13, .18, .21),
        0.52,
        0.34,
        0.50,
        Monthly.of(-5.6, -2.6, 2.4, 6.4, 11.4, 17.0, 19.8, 18.6, 14.0, 7.6, 0.4, -5.2),
        Monthly.of(4.6, 4.4, 4.0, 3.8, 3.4, 2.8, 2.0, 2.0, 2.8, 3.6, 4.2, 4.6),
        15.0,
        Monthly.of(2.8, 3.2, 3.8, 4.4, 4.2, 3.8, 3.2, 3.0, 3.0, 3.0, 2.8, 2.7),
        0.08);
  }

  /** The south's seasons: the dull months are May to July. */
  static ClimateRecipe southIslandCoast() {
    return new ClimateRecipe(
        "south-island-coast",
        "Port Tamarind (invented)",
        -44.2,
        171.3,
        25.0,
        12.0,
        Monthly.of(.51, .50, .48, .46, .43, .42, .43, .45, .46, .48, .50, .50),
        Monthly.of(.33, .34, .37, .40, .44, .46, .44, .42, .40, .37, .35, .34),
        0.48,
        0.32,
        0.55,
        Monthly.of(16.6, 16.4, 14.6, 11.7, 8.7, 6.1, 5.5, 6.8, 9.0, 11.0, 13.0, 15.2),
        Monthly.of(3.0, 2.9, 2.8, 2.7, 2.6, 2.4, 2.3, 2.3, 2.6, 2.8, 2.9, 3.0),
        9.0,
        Monthly.of(4.4, 4.1, 3.8, 3.5, 3.3, 3.2, 3.2, 3.6, 4.0, 4.4, 4.5, 4.5),
        0.0);
  }
}
