### Lo que en México se dice de otra manera que en `es`.

ask-food-giblets = Menudencias crudas
ask-fuel-bottle = Un tanque lleno tiene { $bottle }.
ask-own-density = Ninguna sal es tan ligera o pesada: una cucharadita pesa de 1.5 a 8 g. Revisa la cuchara, por ejemplo: mi sal: 1/4 cdta es { units-example-salt }.
ask-fry-heavy = No: { $given } es demasiado para una freidora. Hasta { $units ->
    [us] 12 lb
   *[metric] 5.4 kg
}.
ask-fry = Freír: al aire libre, a 3 m o más de la casa, aceite a { $units ->
    [us] 350 °F, de 3 a 5 min por libra, nada de más de 12 lb.
   *[metric] 175 °C, de 7 a 11 min por kilo, nada de más de 5.4 kg.
}
ask-fry-time = { $mass } tarda { $time } a { $units ->
    [us] 350 °F
   *[metric] 175 °C
}; está listo con { $target } en todas partes.
